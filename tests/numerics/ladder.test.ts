import fc from 'fast-check';
import { linearRegression } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { cases } from '../../.config/properties.js';
import { type Decay, fitDecay, type NoDecay } from '../../src/numerics/decay.js';
import { gaussNewton, normalDeviates } from './independent.js';

const curve = (start: number, plateau: number, rate: number, doses: readonly number[]): number[] =>
  doses.map((dose) => plateau + (start - plateau) * Math.exp(-rate * dose));

function fitted(doses: readonly number[], hazes: readonly number[]): Decay {
  const fit = fitDecay(doses, hazes);
  if (typeof fit === 'string') throw new Error(fit);
  return fit;
}

const DOSES = [0, 10, 20, 40, 60, 100];
const NOISY = [8.1, 7.2, 6.5, 4.4, 3.9, 2.7];

describe('the curve through a dose ladder', () => {
  it('gives back the parameters of data without noise to 1 part in 1e9, whatever they are', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 20, noNaN: true }),
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        fc.double({ min: 0.3, max: 8, noNaN: true }),
        fc.double({ min: 0.01, max: 5000, noNaN: true }),
        (start, share, steepness, largest) => {
          const doses = [0, 0.1, 0.25, 0.5, 0.75, 1].map((one) => one * largest);
          const rate = steepness / largest;
          const fit = fitted(doses, curve(start, start * share, rate, doses));
          expect(Math.abs(fit.start / start - 1)).toBeLessThan(1e-9);
          expect(Math.abs(fit.plateau / (start * share) - 1)).toBeLessThan(1e-9);
          expect(Math.abs(fit.rate / rate - 1)).toBeLessThan(1e-9);
        },
      ),
      { seed: 7, ...cases(300) },
    );
  });

  it('tells haze without dose from a ladder that has no dose of 0', () => {
    const doses = [50, 60, 80, 120];
    expect(fitted(doses, curve(9, 1, 0.03, doses)).start).toBeCloseTo(9, 9);
  });

  it('takes four hazes that fall at every step for an effect, in whatever order they come', () => {
    // By chance alone the curve would fit four points as well as this more than once in twenty times.
    const points: readonly (readonly [number, number])[] = [
      [0, 9],
      [20, 8.8],
      [40, 4],
      [60, 3.9],
    ];
    const orders = [
      [0, 1, 2, 3],
      [2, 0, 3, 1],
      [3, 2, 1, 0],
    ];
    const fits = orders.map((order) =>
      fitDecay(
        order.map((i) => points[i]?.[0] as number),
        order.map((i) => points[i]?.[1] as number),
      ),
    );
    for (const fit of fits) expect(fit).not.toBe('no effect');
    const rising = orders.map((order) =>
      fitDecay(
        order.map((i) => points[i]?.[0] as number),
        order.map((i) => -(points[i]?.[1] as number) + 20),
      ),
    );
    for (const fit of rising) expect(fit).toBe('rising');
    const broken = [8.8, 9, 4, 3.9];
    expect(fitDecay([0, 20, 40, 60], broken)).toBe('no effect');
  });

  it('does not depend on the order of the points', () => {
    const order = [3, 0, 5, 1, 4, 2];
    const shuffled = fitted(
      order.map((i) => DOSES[i] as number),
      order.map((i) => NOISY[i] as number),
    );
    const sorted = fitted(DOSES, NOISY);
    for (const key of [
      'start',
      'plateau',
      'rate',
      'startError',
      'plateauError',
      'rateError',
      'deviation',
      'rSquared',
    ] as const) {
      expect(Math.abs(shuffled[key] / sorted[key] - 1)).toBeLessThan(1e-9);
    }
  });

  it('agrees with Gauss and Newton on parameters and standard errors, from noisy points', () => {
    const fit = fitted(DOSES, NOISY);
    const other = gaussNewton(DOSES, NOISY, [8, 2, 0.02]);
    const ours = [fit.start, fit.plateau, fit.rate, fit.startError, fit.plateauError, fit.rateError, fit.deviation];
    const theirs = [...other.parameters, ...other.errors, other.deviation];
    for (const [index, value] of ours.entries())
      expect(Math.abs(value / (theirs[index] as number) - 1)).toBeLessThan(1e-7);
  });

  it('is the straight line of a statistics package once the rate is known', () => {
    const fit = fitted(DOSES, NOISY);
    const line = linearRegression(DOSES.map((dose, i) => [Math.exp(-fit.rate * dose), NOISY[i] as number]));
    expect(line.b).toBeCloseTo(fit.plateau, 9);
    expect(line.m + line.b).toBeCloseTo(fit.start, 9);
  });

  it('has the least sum of squares: any other rate does worse', () => {
    const fit = fitted(DOSES, NOISY);
    const squares = (rate: number): number => {
      const line = linearRegression(DOSES.map((dose, i) => [Math.exp(-rate * dose), NOISY[i] as number]));
      return DOSES.reduce(
        (sum, dose, i) => sum + (line.b + line.m * Math.exp(-rate * dose) - (NOISY[i] as number)) ** 2,
        0,
      );
    };
    const least = squares(fit.rate);
    for (let power = -3; power <= 0; power += 0.02)
      expect(squares(10 ** power)).toBeGreaterThanOrEqual(least * (1 - 1e-12));
  });

  it('has the errors that R prints for seed lot 329 of its Loblolly data (example of SSasymp; from memory)', () => {
    const heights = [3.93, 9.34, 26.08, 37.79, 48.31, 56.43];
    const fit = fitted(
      [3, 5, 10, 15, 20, 25],
      heights.map((height) => 100 - height),
    );
    expect(fit.plateauError).toBeCloseTo(8.403, 4);
    expect(fit.startError).toBeCloseTo(1.2261, 4);
    expect(fit.rateError / fit.rate).toBeCloseTo(0.1386, 4);
  });

  it('tells how much of the spread the curve explains', () => {
    const fit = fitted(DOSES, NOISY);
    const mean = NOISY.reduce((sum, haze) => sum + haze, 0) / NOISY.length;
    const squares = (of: readonly number[]) => NOISY.reduce((sum, haze, i) => sum + (haze - (of[i] as number)) ** 2, 0);
    const left = squares(curve(fit.start, fit.plateau, fit.rate, DOSES));
    expect(fit.rSquared).toBeCloseTo(1 - left / squares(DOSES.map(() => mean)), 9);
  });

  it('has standard errors that hold the truth as often as they say, over 3000 ladders with seeded noise', () => {
    const doses = [0, 10, 20, 30, 40, 60, 80, 100, 150];
    const truth = { start: 8, plateau: 1.5, rate: 0.03 };
    const clean = curve(truth.start, truth.plateau, truth.rate, doses);
    const deviate = normalDeviates(20_240_501);
    const inside = { start: 0, plateau: 0, rate: 0 };
    const ladders = 3000;
    const bound = 2.446_911_851; // Student's t, 95 % two-sided, 6 degrees of freedom.
    for (let ladder = 0; ladder < ladders; ladder++) {
      const fit = fitted(
        doses,
        clean.map((haze) => haze + 0.15 * deviate()),
      );
      if (Math.abs(fit.start - truth.start) < bound * fit.startError) inside.start++;
      if (Math.abs(fit.plateau - truth.plateau) < bound * fit.plateauError) inside.plateau++;
      if (Math.abs(fit.rate - truth.rate) < bound * fit.rateError) inside.rate++;
    }
    for (const count of Object.values(inside)) {
      expect(count / ladders).toBeGreaterThan(0.93);
      expect(count / ladders).toBeLessThan(0.97);
    }
  });

  it.each<[string, number[], number[], NoDecay]>([
    ['hazes that are all alike', DOSES, [2, 2, 2, 2, 2, 2], 'no effect'],
    ['hazes that only scatter', [0, 20, 40, 60, 80], [2, 2.1, 1.9, 2, 2.05], 'no effect'],
    ['hazes that rise evenly', DOSES, DOSES.map((dose) => 1 + 0.01 * dose), 'rising'],
    ['hazes that rise to a plateau', DOSES, DOSES.map((dose) => 5 - 4 * Math.exp(-0.05 * dose)), 'rising'],
    ['a straight fall', DOSES, DOSES.map((dose) => 9 - 0.05 * dose), 'no plateau'],
    ['a nearly straight fall', [0, 20, 40, 60], [4, 3, 2.1, 1.3], 'no plateau'],
    ['a fall that gets steeper', DOSES, [9, 8.9, 8.5, 7, 5, 1], 'no plateau'],
    ['a fall that is over at the first dose', [0, 20, 40, 60], [5, 1, 1, 1], 'too steep'],
    ['a fall that is over at the first dose but for what scatters', [0, 20, 40, 60], [9, 3.02, 2.9, 3.1], 'too steep'],
    ['a rise that is over at the first dose', [0, 20, 40, 60], [1, 9, 9.1, 9], 'rising'],
  ])('is not told from %s', (_, doses, hazes, reason) => {
    expect(fitDecay(doses, hazes)).toBe(reason);
  });
});
