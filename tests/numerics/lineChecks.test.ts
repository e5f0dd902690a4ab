import { linearRegression } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { extent } from '../../src/numerics/extent.js';
import { fitLine, type Line } from '../../src/numerics/line.js';
import { bend, without } from '../../src/numerics/lineChecks.js';

const X = [-2, -1, 0, 1, 2, 4];
const Y = [3.1, 1.4, 0.2, 0.9, 4.4, 15.6];

const line = (x: readonly number[], y: readonly number[]): Line => fitLine(x, y) as Line;

/** y = a + b x + c x² by Cramer's rule on the normal equations, and c over its standard error. */
function parabola(x: readonly number[], y: readonly number[]) {
  const sum = (of: (x: number, y: number) => number) => x.reduce((all, one, i) => all + of(one, y[i] as number), 0);
  const s = [0, 1, 2, 3, 4].map((power) => sum((one) => one ** power)) as [number, number, number, number, number];
  const t = [0, 1, 2].map((power) => sum((one, other) => one ** power * other)) as [number, number, number];
  const det = (m: readonly (readonly number[])[]) => {
    const at = m.flat();
    const [A, B, C, D, E, F, G, H, I] = at as [number, number, number, number, number, number, number, number, number];
    return A * (E * I - F * H) - B * (D * I - F * G) + C * (D * H - E * G);
  };
  const gram = [
    [s[0], s[1], s[2]],
    [s[1], s[2], s[3]],
    [s[2], s[3], s[4]],
  ];
  const whole = det(gram);
  const [a, b, c] = [0, 1, 2].map(
    (column) => det(gram.map((row, r) => row.map((one, k) => (k === column ? (t[r] as number) : one)))) / whole,
  ) as [number, number, number];
  const squares = sum((one, other) => (other - a - b * one - c * one * one) ** 2);
  const inverse = (s[0] * s[2] - s[1] * s[1]) / whole;
  return { c, significance: c / Math.sqrt((squares / (x.length - 3)) * inverse) };
}

describe('the extent of some numbers', () => {
  it('is told in any order', () => {
    for (const values of [
      [-3, 5, 2],
      [5, 2, -3],
      [2, -3, 5],
    ]) {
      expect(extent(values)).toEqual({ least: -3, most: 5, span: 8 });
    }
    expect(extent([-7])).toEqual({ least: -7, most: -7, span: 0 });
  });
});

describe('whether points bend away from their line', () => {
  it('agrees with a parabola by the normal equations', () => {
    const { c, significance } = parabola(X, Y);
    const found = bend(line(X, Y), X, Y);
    expect(found?.sag).toBeCloseTo(c * 3 ** 2, 10);
    expect(found?.significance).toBeCloseTo(significance, 8);
  });

  it('is not asked of three points, and has a sign', () => {
    expect(bend(line([0, 1, 2], [0, 1, 4]), [0, 1, 2], [0, 1, 4])).toBeUndefined();
    const four = bend(line([0, 1, 2, 3], [0, 1, 4, 9.5]), [0, 1, 2, 3], [0, 1, 4, 9.5]);
    expect(four?.sag).toBeGreaterThan(0);
    const down = bend(line([0, 1, 2, 3], [0, -1, -4, -9.5]), [0, 1, 2, 3], [0, -1, -4, -9.5]);
    expect(down?.sag).toBeCloseTo(-(four?.sag as number), 12);
  });

  it('is nothing where only two places of x are there', () => {
    const [x, y] = [
      [0, 0, 1, 1],
      [0, 1, 2, 3],
    ];
    expect(bend(line(x, y), x, y)).toBeUndefined();
  });
});

describe('the line without one of its points', () => {
  it('is the line through the others', () => {
    for (const [index, x] of X.entries()) {
      const rest = X.map((one, i) => [one, Y[i] as number]).filter((_, i) => i !== index);
      const { m, b } = linearRegression(rest);
      const found = without(line(X, Y), x, Y[index] as number);
      expect(found?.away).toBeCloseTo((Y[index] as number) - (b + m * x), 10);
      expect(found?.intercept).toBeCloseTo(b, 10);
      // The prediction at x from the others: its error has their scatter and its own.
      const others = rest.length;
      const mean = rest.reduce((sum, [one]) => sum + (one as number), 0) / others;
      const spread = rest.reduce((sum, [one]) => sum + ((one as number) - mean) ** 2, 0);
      const left =
        rest.reduce((sum, [one, y]) => sum + ((y as number) - b - m * (one as number)) ** 2, 0) / (others - 2);
      const error = Math.sqrt(left * (1 + 1 / others + (x - mean) ** 2 / spread));
      expect(found?.significance).toBeCloseTo((found?.away as number) / error, 8);
    }
  });

  it('is not asked of three points', () => {
    expect(without(line([0, 1, 2], [0, 1, 4]), 0, 0)).toBeUndefined();
  });
});
