import { describe, expect, it } from 'vitest';
import { studentQuantile, studentTails, tailQuantile } from '../../src/numerics/student.js';

describe('Student’s t', () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.6.7.2, critical values of Student’s t (from memory).
  it.each([
    [1, 6.314, 12.706, 63.657],
    [2, 2.92, 4.303, 9.925],
    [3, 2.353, 3.182, 5.841],
    [5, 2.015, 2.571, 4.032],
    [10, 1.812, 2.228, 3.169],
    [20, 1.725, 2.086, 2.845],
    [30, 1.697, 2.042, 2.75],
    [100, 1.66, 1.984, 2.626],
  ])('has the tabled quantiles at %d degrees of freedom', (freedom, ninety, ninetyFive, ninetyNine) => {
    expect(studentQuantile(0.9, freedom)).toBeCloseTo(ninety, 3);
    expect(studentQuantile(0.95, freedom)).toBeCloseTo(ninetyFive, 3);
    expect(studentQuantile(0.99, freedom)).toBeCloseTo(ninetyNine, 3);
  });

  it('has the closed forms of one and two degrees of freedom, far out too', () => {
    for (const t of [1e-6, 0.3, 1, 4, 50, 1e5]) {
      expect(studentTails(t, 1) / ((2 / Math.PI) * Math.atan(1 / t))).toBeCloseTo(1, 9);
      // 1 − t/√(2 + t²), written so that no digits are lost.
      const root = Math.sqrt(2 + t * t);
      expect(studentTails(t, 2) / (2 / (root * (root + t)))).toBeCloseTo(1, 9);
    }
  });

  it('is the normal distribution where freedom is large, and has its ends', () => {
    expect(studentQuantile(0.95, 1e9)).toBeCloseTo(1.959964, 6);
    expect(studentTails(0, 7)).toBeCloseTo(1, 12);
    expect(studentTails(Number.POSITIVE_INFINITY, 7)).toBe(0);
  });
});

describe('a quantile', () => {
  const halved = (tails: (t: number) => number, share: number): number => {
    let [least, most] = [0, 2 ** 40];
    for (let step = 0; step < 120; step++) {
      const middle = (least + most) / 2;
      if (tails(middle) > share) least = middle;
      else most = middle;
    }
    return least;
  };

  it('is found in fewer than twenty looks in the mean, where halving takes fifty, and is the same', () => {
    const all: number[] = [];
    for (const freedom of [1, 2, 5, 10, 32, 100, 1000]) {
      for (const share of [0.5, 0.2, 0.05, 0.01, 0.001]) {
        let looks = 0;
        const tails = (t: number) => studentTails(t, freedom);
        const found = tailQuantile((t) => {
          looks++;
          return tails(t);
        }, share);
        expect(found / halved(tails, share) - 1, `${share} at ${freedom}`).toBeCloseTo(0, 11);
        all.push(looks);
      }
    }
    expect(all.reduce((sum, one) => sum + one, 0) / all.length).toBeLessThan(20);
    expect(Math.max(...all)).toBeLessThan(60);
  });
});
