import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue.js';
import type { Bounds } from '../../src/core/input.js';
import { scaleOf } from '../../taskpane/pane/range/scale.js';

const bounds: Bounds[] = catalogue.flatMap(({ inputs }) =>
  Object.values(inputs).flatMap((input): readonly Bounds[] => {
    if (input.kind === 'plan') return Object.values(input.table);
    return 'limit' in input ? [input] : [];
  }),
);

describe('the range bar', () => {
  it('runs from the least to the most of every input, and rises all the way', () => {
    for (const one of bounds) {
      const [least, most] = one.limit;
      const { at } = scaleOf(one);
      expect([at(least), at(most)]).toEqual([0, 1]);
      if (one.usual) expect(at(one.usual[0])).toBeLessThan(at(one.usual[1]));
    }
  });

  it('shows every usual range as more than a line', () => {
    const thin = bounds.filter(({ usual, ...one }) => {
      if (!usual) return false;
      const { at } = scaleOf({ ...one, usual });
      return at(usual[1]) - at(usual[0]) < 0.02;
    });
    expect(thin).toEqual([]);
  });

  it('is logarithmic where positive limits span more than three decades', () => {
    const { at, decades } = scaleOf({ limit: [0.001, 1000] });
    expect(at(1)).toBeCloseTo(0.5);
    expect(decades).toEqual([0.01, 0.1, 1, 10, 100]);
  });

  it('is straight where the limits are close together, and puts what lies outside at the ends', () => {
    const { at, decades } = scaleOf({ limit: [0, 1] });
    expect([at(0.25), at(-3), at(7), decades]).toEqual([0.25, 0, 1, []]);
  });
});
