import { describe, expect, it, onTestFinished } from 'vitest';
import { workbookOf } from '../../taskpane/workbook/grid/place.js';
import { read } from '../../taskpane/workbook/grid/read.js';
import { calculateCells } from './headless.js';

const range = (top: number, left: number, bottom: number | null, right: number | null, sheet = 'Sheet 1') =>
  ({ kind: 'range', sheet, top, left, bottom, right }) as const;

async function sheet(rows: Parameters<typeof calculateCells>[0]) {
  const calculated = await calculateCells(rows);
  onTestFinished(() => calculated.dispose());
  return calculated;
}

describe('reading cells of the embedded workbook', () => {
  it('gives values, what formulas result in and what they spill, and blanks as null', async () => {
    const { grid } = await sheet([
      ['Mass', 100, '=POWDER.DRYMASS(B1:B2,0.5)'],
      ['', 300, ''],
    ]);
    expect(read(grid, [range(0, 0, 1, 2), range(5, 0, 5, 0)])).toEqual([
      [
        ['Mass', 100, 50],
        [null, 300, 150],
      ],
      [[null]],
    ]);
  });

  it('gives an error cell as its code', async () => {
    const { grid } = await sheet([['=POWDER.DRYMASS(100,65)']]);
    expect(read(grid, [range(0, 0, 0, 0)])).toEqual([[['#VALUE!']]]);
  });

  it('reads whole columns as far as the sheet holds anything', async () => {
    const { grid } = await sheet([[1], [2], [3]]);
    expect(read(grid, [range(0, 0, null, 0)])).toEqual([[[1], [2], [3]]]);
  });

  it('follows a name to its cells', async () => {
    const { grid } = await sheet([[60], [90]]);
    workbookOf(grid).insertDefinedName('dose', "'Sheet 1'!$A$1:$A$2");
    expect(read(grid, [{ kind: 'name', sheet: 'Sheet 1', name: 'dose' }])).toEqual([[[60], [90]]]);
  });

  it('has nothing at places that it does not have, and reads the rest', async () => {
    const { grid } = await sheet([[1]]);
    const gone = [
      range(0, 0, 0, 0, 'Gone'),
      range(0, 0, 0, 5000),
      { kind: 'name', sheet: 'Sheet 1', name: 'gone' } as const,
      { kind: 'spill', sheet: 'Sheet 1', row: 0, column: 0 } as const,
      { kind: 'table', table: 'Log' } as const,
    ];
    expect(read(grid, [...gone, range(0, 0, 0, 0)])).toEqual([...gone.map(() => undefined), [[1]]]);
  });
});
