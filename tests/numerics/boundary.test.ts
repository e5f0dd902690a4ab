import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundary, leastOfConvex } from '../../src/numerics/boundary.js';

describe('a boundary', () => {
  it('stands between two neighbouring numbers, whichever way it is looked for', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 999, noNaN: true }), (at) => {
        const up = boundary((x) => x > at, 0, 1000);
        expect(up.before).toBe(at);
        expect(up.beyond).toBeGreaterThan(at);
        const down = boundary((x) => x < at, 1000, 0);
        expect(down.before).toBe(at);
        expect(down.beyond).toBeLessThan(at);
      }),
    );
  });
});

describe('the least place of a convex function', () => {
  it('is where the slope turns, at a kink or on smooth ground', () => {
    expect(leastOfConvex((x) => (x < 3 ? -1 : 2), 0, 10).beyond).toBe(3);
    expect(leastOfConvex((x) => 2 * (x - Math.PI), 0, 10).before).toBeCloseTo(Math.PI, 14);
  });

  it('is an end of the span where the function falls or rises all the way', () => {
    expect(leastOfConvex(() => 1, 2, 5)).toEqual({ before: 2, beyond: 2 });
    expect(leastOfConvex(() => -1, 2, 5)).toEqual({ before: 5, beyond: 5 });
  });
});
