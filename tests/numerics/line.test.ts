import fc from 'fast-check';
import { linearRegression, rSquared } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { fitLine, type Line } from '../../src/numerics/line.js';
import { bend, heightError, without } from '../../src/numerics/lineChecks.js';
import { NORRIS } from './norris.js';

const x = NORRIS.map(([, one]) => one);
const y = NORRIS.map(([one]) => one);

const fitted = (one: ArrayLike<number>, other: ArrayLike<number>): Line => {
  const line = fitLine(one, other);
  if (!line) throw new Error('No line.');
  return line;
};

/** Digits that agree with a certified value. */
const digits = (value: number | undefined, certified: number) =>
  -Math.log10(Math.abs((value as number) / certified - 1) || 1e-16);

const points = fc
  .array(fc.tuple(fc.double({ min: -100, max: 100, noNaN: true }), fc.double({ min: -100, max: 100, noNaN: true })), {
    minLength: 5,
    maxLength: 40,
  })
  .filter((all) => new Set(all.map(([one]) => Math.round(one))).size >= 4);

describe('a fitted line', () => {
  it('agrees with the certified values of NIST’s Norris data to at least 9 digits', () => {
    const line = fitted(x, y);
    expect(line.count).toBe(36);
    expect(digits(line.intercept, -0.262323073774029)).toBeGreaterThan(9);
    expect(digits(line.slope, 1.00211681802045)).toBeGreaterThan(9);
    expect(digits(line.interceptError, 0.232818234301152)).toBeGreaterThan(9);
    expect(digits(line.slopeError, 4.29796848199937e-4)).toBeGreaterThan(9);
    expect(digits(line.deviation, 0.884796396144373)).toBeGreaterThan(9);
    expect(digits(line.rSquared, 0.999993745883712)).toBeGreaterThan(9);
  });

  it('keeps those digits far from the origin', () => {
    const line = fitted(
      x.map((one) => one + 1e6),
      y,
    );
    expect(digits(line.slope, 1.00211681802045)).toBeGreaterThan(9);
    expect(digits(line.deviation, 0.884796396144373)).toBeGreaterThan(9);
  });

  it('agrees with a general statistics package', () => {
    fc.assert(
      fc.property(points, (all) => {
        const line = fitted(
          all.map(([one]) => one),
          all.map(([, one]) => one),
        );
        const { m, b } = linearRegression(all);
        expect(line.slope).toBeCloseTo(m, 7);
        expect(line.intercept).toBeCloseTo(b, 5);
        if (line.rSquared !== undefined)
          expect(line.rSquared).toBeCloseTo(
            rSquared(all, (at) => m * at + b),
            6,
          );
      }),
    );
  });

  it('is none where all x are the same or a single point stands', () => {
    expect(fitLine([1, 1, 1], [1, 2, 3])).toBeUndefined();
    expect(fitLine([1], [1])).toBeUndefined();
  });

  it('leaves the standard errors out where two points leave no freedom', () => {
    const line = fitted([0, 1], [1, 3]);
    expect([line.slope, line.intercept, line.slopeError, line.interceptError]).toEqual([2, 1, undefined, undefined]);
    expect(heightError(line, 1)).toBeUndefined();
  });

  it('tells the standard error of its height, which at 0 is that of the intercept', () => {
    const line = fitted(x, y);
    expect(heightError(line, 0)).toBe(line.interceptError);
    // Moving the origin to a place makes its height the intercept.
    expect(heightError(line, 500)).toBeCloseTo(
      fitted(
        x.map((one) => one - 500),
        y,
      ).interceptError as number,
      12,
    );
  });
});

describe('leaving one point out', () => {
  it('gives the line through the others without fitting it anew', () => {
    fc.assert(
      fc.property(points, (all) => {
        const others = all.slice(1);
        const again = fitLine(
          others.map(([one]) => one),
          others.map(([, one]) => one),
        );
        const [first] = all as [[number, number]];
        const found = without(
          fitted(
            all.map(([one]) => one),
            all.map(([, one]) => one),
          ),
          ...first,
        );
        if (!again || !found) return;
        expect(found.intercept).toBeCloseTo(again.intercept, 5);
        expect(found.away).toBeCloseTo(first[1] - again.intercept - again.slope * first[0], 5);
      }),
    );
  });

  it('measures how far off the point lies by the scatter of the others', () => {
    const line = fitted(x, y);
    const again = fitted(x.slice(1), y.slice(1));
    const found = without(line, x[0] as number, y[0] as number);
    const error = Math.hypot(again.deviation as number, heightError(again, x[0] as number) as number);
    expect(found?.significance).toBeCloseTo((found?.away as number) / error, 9);
  });
});

describe('the bend of points about their line', () => {
  it('is the parabola that lies under them', () => {
    const at = [0, 1, 2, 3, 5, 8, 10];
    const found = bend(
      fitted(
        at,
        at.map((one) => 1 + 2 * one + 0.3 * one * one),
      ),
      at,
      at.map((one) => 1 + 2 * one + 0.3 * one * one),
    );
    expect(found?.sag).toBeCloseTo(0.3 * 25, 10);
    expect(found?.significance).toBeGreaterThan(1e3);
  });

  it('points down where they curve down, and is nothing on a line', () => {
    const at = [0, 1, 2, 3, 4, 5];
    const down = at.map(Math.sqrt);
    expect(bend(fitted(at, down), at, down)?.sag).toBeLessThan(0);
    const straight = at.map((one) => 3 * one);
    expect(Math.abs(bend(fitted(at, straight), at, straight)?.sag as number)).toBeLessThan(1e-12);
  });

  it('cannot be told from three points', () => {
    expect(bend(fitted([0, 1, 2], [0, 1, 4]), [0, 1, 2], [0, 1, 4])).toBeUndefined();
  });
});
