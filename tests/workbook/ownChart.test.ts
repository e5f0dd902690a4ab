import { describe, expect, it } from 'vitest';
import { de } from '../../taskpane/texts/de.js';
import { en } from '../../taskpane/texts/en.js';
import { type ChartKind, ownChart } from '../../taskpane/workbook/grid/ownChart.js';

type Row = readonly (string | number | null)[];

const drawn = (kind: ChartKind, rows: readonly Row[], words = en.charts) => {
  const region = { top: 1, left: 1, bottom: rows.length, right: rows[0]?.length ?? 1 };
  const chart = ownChart(kind, region, (row, column) => rows[row - 1]?.[column - 1] ?? null, words);
  return typeof chart === 'function' ? chart(words) : chart;
};

describe('a chart of one’s own', () => {
  it('takes names and units from the rows over its figures', () => {
    const rows = [
      ['Volume', 'Pressure'],
      ['hL', 'bar'],
      [0, 0.6],
      [100, 1.1],
    ];
    expect(drawn('lines', rows)).toEqual({
      title: 'Pressure over Volume',
      kind: 'lines',
      across: { title: 'Volume (hL)' },
      upwards: { title: 'Pressure (bar)' },
      series: [{ name: 'Pressure', named: 'C2', across: 'B4:B5', upwards: 'C4:C5' }],
    });
    expect(drawn('points', rows, de.charts)).toMatchObject({ title: 'Pressure über Volume' });
  });

  it('draws several columns, with their common unit upwards', () => {
    const chart = drawn('points', [
      ['Hours', 'Old', 'New'],
      ['h', 'bar', 'bar'],
      [0, 1, 2],
    ]);
    expect(chart).toMatchObject({ upwards: { title: 'bar' }, series: [{ named: 'C2' }, { named: 'D2' }] });
  });

  it('names columns by their letters where no titles stand', () => {
    expect(
      drawn('lines', [
        [0, 1],
        [1, 2],
      ]),
    ).toMatchObject({
      title: 'Column C over Column B',
      series: [{ name: 'Column C', across: 'B2:B3', upwards: 'C2:C3' }],
    });
  });

  it('draws lines over the first figures, bars over the first column', () => {
    const rows = [
      ['Beer', 'Volume', 'Cost'],
      ['Pale', 10, 3],
      ['Dark', 20, 4],
    ];
    expect(drawn('lines', rows)).toMatchObject({ series: [{ across: 'C3:C4', upwards: 'D3:D4' }] });
    expect(drawn('bars', rows)).toMatchObject({
      title: 'Volume, Cost by Beer',
      series: [{ across: 'B3:B4', upwards: 'C3:C4' }, { across: 'B3:B4' }],
    });
  });

  it('says what it needs', () => {
    expect(drawn('lines', [['Beer'], [1]])).toBe(en.charts.twoColumns);
    expect(
      drawn('bars', [
        ['Beer', 'Kind'],
        ['Pale', 'dry'],
      ]),
    ).toBe(en.charts.twoColumns);
    expect(drawn('lines', [[1, 2, 3, 4, 5, 6]])).toBe(en.charts.tooMany('4', '5'));
  });
});
