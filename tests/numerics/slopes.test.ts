import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../.config/properties.js';
import { slopesOf } from '../../src/numerics/slopes.js';

/** Points on a coarse lattice, so that slopes and places fall together often; in the order of x, ties by y. */
const lattice = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 4 }), fc.integer({ min: -3, max: 3 })), { minLength: 1, maxLength: 14 })
  .map((rows) => rows.sort(([x1, y1], [x2, y2]) => x1 - x2 || y1 - y2))
  .map((rows) => ({ x: Float64Array.from(rows, ([x]) => x), y: Float64Array.from(rows, ([, y]) => y) }));
type Points = { readonly x: Float64Array; readonly y: Float64Array };

/** Every slope between two points of different x, made. */
function made({ x, y }: Points): number[] {
  const slopes: number[] = [];
  for (let i = 0; i < x.length; i++)
    for (let j = i + 1; j < x.length; j++)
      if (x[i] !== x[j]) slopes.push(((y[j] as number) - (y[i] as number)) / ((x[j] as number) - (x[i] as number)));
  return slopes.sort((one, other) => one - other);
}
const sorted = (slopes: readonly number[]) => slopes.map((one) => one + 0).sort((one, other) => one - other);
/** Slopes of the lattice and places between and beyond them; halves and whole numbers are exact. */
const slope = fc.constantFrom(-3, -2, -1.5, -1, -0.75, -0.5, -0.25, 0, 0.25, 0.5, 1, 1.25, 1.5, 2, 3, 7);

describe('slopes that are counted without being made', () => {
  it('are as many as the pairs at different x', () => {
    fc.assert(
      fc.property(lattice, (points) => {
        expect(slopesOf(points).count).toBe(made(points).length);
      }),
      cases(300),
    );
  });

  it('stand below, at and above a slope as those that are made do', () => {
    fc.assert(
      fc.property(lattice, slope, (points, at) => {
        const all = made(points);
        expect(slopesOf(points).standing(at)).toEqual({
          below: all.filter((one) => one < at).length,
          upTo: all.filter((one) => one <= at).length,
        });
      }),
      cases(500),
    );
  });

  it('are made strictly between two others: all, or those at some places of their order', () => {
    fc.assert(
      fc.property(lattice, slope, slope, fc.func(fc.boolean()), (points, one, other, taken) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        fc.pre(low < high);
        const slopes = slopesOf(points);
        const between = slopes.between(low, high);
        expect(sorted(between)).toEqual(sorted(made(points).filter((each) => each > low && each < high)));
        const places = between.map((_, place) => place).filter((place) => taken(place));
        expect(slopes.between(low, high, Float64Array.from(places))).toEqual(places.map((place) => between[place]));
      }),
      cases(500),
    );
  });

  it('are all made where nothing bounds them', () => {
    fc.assert(
      fc.property(lattice, (points) => {
        const all = slopesOf(points).between(Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY);
        expect(sorted(all)).toEqual(sorted(made(points)));
      }),
      cases(200),
    );
  });
});
