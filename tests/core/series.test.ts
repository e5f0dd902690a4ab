import { describe, expect, it } from 'vitest';
import type { Cell, SeriesInput } from '../../src/core/input.js';
import { readSeries } from '../../src/core/series.js';

const doses: SeriesInput = {
  kind: 'series',
  label: 'Doses',
  unit: 'g/hL',
  limit: [0, 500],
  least: 3,
  help: 'Doses.',
  source: 'Made up.',
};
const hazes: SeriesInput = { ...doses, label: 'Hazes', unit: 'EBC', limit: [0.1, 100] };
const flux: SeriesInput = { ...doses, label: 'Flux', unit: 'hL/(m² h)', limit: [0.1, 50], oneForAll: true };

const read = (given: { doses?: readonly Cell[]; hazes?: readonly Cell[] }) =>
  readSeries(
    [
      ['doses', doses],
      ['hazes', hazes],
    ],
    given,
  );

describe('series inputs', () => {
  it('are read into SI, paired by position', () => {
    expect(read({ doses: [0, 50, 100], hazes: [3, 2, 1] })).toEqual({
      doses: Float64Array.of(0, 0.5, 1),
      hazes: Float64Array.of(3, 2, 1),
    });
  });

  it('pass over blank pairs at the end, whether the host hands blanks over as nothing or as 0', () => {
    expect(read({ doses: [0, 50, 100, null, ''], hazes: [3, 2, 1, null, null] })).toMatchObject({
      doses: { length: 3 },
    });
    expect(read({ doses: [0, 50, 100, 0, 0], hazes: [3, 2, 1, 0, 0] })).toMatchObject({ doses: { length: 3 } });
  });

  it('name the series, the row and what stands there', () => {
    expect(read({ doses: [0, 50, 100, 150], hazes: [3, 2, 1, 'clear'] })).toEqual({
      refused: 'Hazes, row 4, is text, not a number: "clear". It must be from 0.1 to 100 EBC.',
    });
    expect(read({ doses: [0, 50, 100], hazes: [3, null, 1] })).toEqual({
      refused: 'Hazes, row 2, is blank. It must be from 0.1 to 100 EBC.',
    });
    expect(read({ doses: [0, 50, 900], hazes: [3, 2, 1] })).toEqual({
      refused: 'Doses, row 3, must be from 0 to 500 g/hL, but 900 g/hL was given.',
    });
    expect(read({ doses: [0, true, 900], hazes: [3, 2, 1] })).toEqual({
      refused: 'Doses, row 2, is TRUE, not a number. It must be from 0 to 500 g/hL.',
    });
  });

  it('are refused when one is longer than the other', () => {
    expect(read({ doses: [0, 50, 100], hazes: [3, 2, 1, 0.5] })).toEqual({
      refused: 'Doses and Hazes must be equally long, but Doses has 3 rows and Hazes 4.',
    });
  });

  it('are refused when too few, blank or not given', () => {
    expect(read({ doses: [0, 50], hazes: [3, 2] })).toEqual({
      refused: 'Doses needs at least 3 rows, each from 0 to 500 g/hL, but 2 were given.',
    });
    expect(read({ doses: [null], hazes: [null] })).toEqual({
      refused: 'Doses needs at least 3 rows, each from 0 to 500 g/hL, but the range is blank.',
    });
    expect(read({ doses: [1, 2, 3] })).toEqual({
      refused: 'Hazes must be from 0.1 to 100 EBC, but nothing was given.',
    });
  });

  it('let one cell stand for every position where that is declared', () => {
    const inputs = [
      ['doses', doses],
      ['flux', flux],
    ] as const;
    const values = readSeries(inputs, { doses: [1, 2, 3], flux: [7.2] }) as Record<string, Float64Array>;
    expect(values.flux).toEqual(new Float64Array(3).fill(7.2 / 36_000));
    expect(readSeries(inputs, { doses: [1, 2, 3], flux: [0] })).toEqual({
      refused: expect.stringMatching(
        /^Flux, row 1, must be from 0\.1 to 50 hL\/\(m² h\), but the cell is blank or 0\.$/,
      ),
    });
  });
});
