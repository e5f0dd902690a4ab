import { describe, expect, it, onTestFinished } from 'vitest';
import { workbookOf } from '../../../taskpane/workbook/grid/place.js';
import { readAll } from '../../../taskpane/workbook/grid/readAll.js';
import { bookOfGrid } from '../../../taskpane/workbook/grid/toBook.js';
import { writeBook } from '../../../taskpane/workbook/xlsx/writeBook.js';
import { calculateCells } from '../headless.js';
import { readOf } from './handMade.js';

const ROWS = [1, 2, 3, 4, 5, 6];
/** The formula in one row, by the rule of every spreadsheet: what stands behind a `$` stays, the rest moves along. */
const inRow = (n: number) => `=A${n}*2+$A$1-A$1+SUM($A${n}:A${n + 1})+'Sheet 1'!A${n}+SUM(C:C)+COUNTA("A1")`;

/** Six figures with the formula beside the first of them copied down. */
async function copiedDown() {
  const calculated = await calculateCells(ROWS.map((n) => (n === 1 ? [n, inRow(n)] : [n])));
  onTestFinished(() => calculated.dispose());
  const cells = workbookOf(calculated.grid).getActiveSheet();
  await cells.getRange('B1').autoFill(cells.getRange('B1:B6'));
  await calculated.enter('A6', 6);
  return calculated;
}

const saved = ({ grid }: Awaited<ReturnType<typeof copiedDown>>) =>
  readOf(writeBook(bookOfGrid(grid))).book.sheets[0]?.rows.map((row) => row?.[1]);

describe('formulas that were copied down', () => {
  it('stand in the file as formulas with their answers, row after row', async () => {
    expect(saved(await copiedDown())).toEqual(
      ROWS.map((n) => ({ formula: inRow(n), value: n * 2 + n + (n < 6 ? n + 1 : 0) + n + 1 })),
    );
  });

  it('stay formulas where the one they were copied from is written over', async () => {
    const sheet = await copiedDown();
    await sheet.enter('B1', 7);
    await sheet.enter('B2', 7);
    expect(saved(sheet)?.map((cell) => cell?.formula)).toEqual(ROWS.map((n) => (n < 3 ? undefined : inRow(n))));
  });

  it('are read as formulas by the check of the whole workbook', async () => {
    const { grid } = await copiedDown();
    expect(readAll(grid).sheets[0]?.formulas.map((row) => row[1])).toEqual(ROWS.map(inRow));
  });
});
