import { describe, expect, it } from 'vitest';
import { combine, covers, placeIn, tooLarge } from '../../functions/combine.js';
import { call } from './answers.js';

describe('the shapes of ranges', () => {
  const shape = (rows: number, columns: number) => ({ rows, columns });

  it('reach every place of the whole where each side is one or all of it', () => {
    expect(covers(shape(1, 1), shape(3, 2))).toBe(true);
    expect(covers(shape(3, 1), shape(3, 2))).toBe(true);
    expect(covers(shape(1, 2), shape(3, 2))).toBe(true);
    expect(covers(shape(3, 2), shape(3, 2))).toBe(true);
    expect(covers(shape(2, 2), shape(3, 2))).toBe(false);
    expect(covers(shape(3, 2), shape(3, 3))).toBe(false);
    expect(covers(shape(2, 1), shape(3, 1))).toBe(false);
  });

  it('combine to the longest of each side', () => {
    expect(combine([shape(2, 1), shape(1, 3)])).toEqual(shape(2, 3));
    expect(combine([])).toEqual(shape(1, 1));
  });

  it('may combine to 4,194,304 cells, and no more', () => {
    expect(tooLarge(shape(2048, 2048))).toBeUndefined();
    expect(tooLarge(shape(2049, 2048))).toContain('2049 rows × 2048 columns');
  });

  it('tell where a place of the answer stands in one of them', () => {
    expect(placeIn(shape(1, 1), 5, 7)).toBe(0);
    expect(placeIn(shape(3, 2), 2, 1)).toBe(5);
    expect(placeIn(shape(3, 1), 2, 9)).toBe(2);
    expect(placeIn(shape(3, 2), 3, 0)).toBe(-1);
    expect(placeIn(shape(3, 2), 0, 2)).toBe(-1);
  });
});

describe('errors in a long column', () => {
  it('are one object for each sentence', () => {
    const column = call('DRYMASS', [[100], [100], [100]], [[7], [8], [7]]) as unknown[][];
    expect(column[0]?.[0]).toBe(column[2]?.[0]);
    expect(column[0]?.[0]).not.toBe(column[1]?.[0]);
  });

  it('leave the answers around them alone, whatever varies', () => {
    expect(call('OVENMOISTURE', [[20], [20], [20]], [[6.6], [30], [10]], [[0], [0], [0]]) as unknown[][]).toMatchObject(
      [[0.67], [{ code: '#VALUE!' }], [0.5]],
    );
  });
});
