import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it, onTestFinished } from 'vitest';
import { gridOfBook } from '../../../taskpane/workbook/grid/ofBook.js';
import { bookOfGrid } from '../../../taskpane/workbook/grid/toBook.js';
import { fromOlder } from '../../../taskpane/workbook/xlsx/olderFormula.js';
import { asOlder } from '../../../taskpane/workbook/xlsx/plainFormula.js';
import { writeBook } from '../../../taskpane/workbook/xlsx/writeBook.js';
import { calculateCells, calculateWorkbook } from '../headless.js';
import { opened, rows, words } from './handMade.js';

const ranges = new Map([
  ['amounts', '$A$1:$A$6'],
  ['first', '$A$1'],
]);

// Where a function takes one value and where a range: OpenFormula 1.2, part 6, types of parameters; that a range stands for
// the cell beside the formula: part 3.3, implicit intersection. What INDEX and LOOKUP calculate is common practice, no source.
const OLDER: readonly (readonly [older: string, newer: string | undefined])[] = [
  ['SQRT(A1:A3)', 'SQRT(SINGLE(A1:A3))'],
  ['A1:A6*2', 'SINGLE(A1:A6)*2'],
  ['-A:A', '-SINGLE(A:A)'],
  ['amounts*first', 'SINGLE(amounts)*first'],
  ['IF(amounts>3,B1:B6,"")', 'IF(SINGLE(amounts)>3,SINGLE(B1:B6),"")'],
  ['SUM(A1:A3)', 'SUM(A1:A3)'],
  ['SUM(SQRT(A1:A3))', 'SUM(SQRT(SINGLE(A1:A3)))'],
  ['SUM(A1:A3*2,B1:B2)', 'SUM(SINGLE(A1:A3)*2,B1:B2)'],
  ['SUMPRODUCT(SQRT(A1:A3)*(B1:B3>1))', 'SUMPRODUCT(SQRT(A1:A3)*(B1:B3>1))'],
  ['SUMIFS(A1:A3,B1:B3,C1:C3)', 'SUMIFS(A1:A3,B1:B3,SINGLE(C1:C3))'],
  ['VLOOKUP(A1:A3,D1:E9,2,FALSE)', 'VLOOKUP(SINGLE(A1:A3),D1:E9,2,FALSE)'],
  ['LOOKUP(2,1/(A1:A9<>""),B1:B9)', 'LOOKUP(2,1/(A1:A9<>""),B1:B9)'],
  ['INDEX(A1:A9,MATCH(3,B1:B9,0))', 'INDEX(A1:A9,MATCH(3,B1:B9,0))'],
  ['INDEX(A1:A9,B1)*2', 'SINGLE(INDEX(A1:A9,B1))*2'],
  ['SUM(INDEX(A1:B9,0,2))', 'SUM(INDEX(A1:B9,0,2))'],
  ['SUM(OFFSET(A1,0,0,3,1))', 'SUM(OFFSET(A1,0,0,3,1))'],
  ['OFFSET(A1,2,0)+1', 'OFFSET(A1,2,0)+1'],
  ['LINEST(B1:B5,A1:A5)', 'SINGLE(LINEST(B1:B5,A1:A5))'],
  ['INDEX(LINEST(B1:B5,A1:A5),1,2)', 'INDEX(LINEST(B1:B5,A1:A5),1,2)'],
  ['A1&{"x","y"}', 'SINGLE(A1&{"x","y"})'],
  ['SUM(LARGE(A1:A9,{1,2}))', 'SUM(LARGE(A1:A9,{1,2}))'],
  ['ROW(A1:A3)', 'SINGLE(ROW(A1:A3))'],
  ['XLOOKUP(3,A1:A6,B1:B6)', 'XLOOKUP(3,A1:A6,B1:B6)'],
  ['XLOOKUP(3,A1:A6,B1:D6)', 'SINGLE(XLOOKUP(3,A1:A6,B1:D6))'],
  ['POWDER.FITCAKE(A1:A9,B1:B9)', 'POWDER.FITCAKE(A1:A9,B1:B9)'],
  ["SUM('a:b'!A1)", "SUM('a:b'!A1)"],
  ['SUMPRODUCT(IF(A1:A3>1,1,0))', undefined],
  ['SUM(LINEST(LN(A1:A3),B1:B3))', undefined],
];

describe('a formula of a file that gives one value', () => {
  it.each(OLDER)('takes one cell of a range where a place asks for one: %s', (older, newer) => {
    expect(fromOlder(older, ranges)).toBe(newer);
    if (newer !== undefined) expect(asOlder(newer, ranges)).toBe(older);
  });

  it('is no such formula in a file where it would be calculated otherwise', () => {
    const spilling = ['A1:A3*2', 'SUM(SQRT(A1:A3))', 'amounts', 'SINGLE(A1:A3+1)*2', 'INDEX(A1:A9,B1)', 'SORT(A1:A3)'];
    for (const text of spilling) expect(asOlder(text, ranges), text).toBeUndefined();
  });
});

async function throughGrid(inside: readonly string[], after = '') {
  const { book, leftOut } = opened({ sheets: [rows(...inside)], after });
  const sheet = await calculateWorkbook(gridOfBook(book));
  onTestFinished(() => sheet.dispose());
  const parts = unzipSync(writeBook(bookOfGrid(sheet.grid)));
  return { sheet, leftOut, saved: strFromU8(parts['xl/worksheets/sheet1.xml'] as Uint8Array) };
}

const column = (formula: string, kind = '') =>
  [4, 9, 16].map(
    (value, n) => `<c r="A${n + 1}"><v>${value}</v></c><c r="B${n + 1}"><f${kind}>${formula}</f><v>0</v></c>`,
  );

describe('a range that stands for one cell', () => {
  it('is that cell in the grid, beside a column and below a row, and stays what it is in the file', async () => {
    const { sheet, leftOut, saved } = await throughGrid(column('SQRT($A$1:$A$3)'));
    expect(['B1', 'B2', 'B3', 'C1'].map((place) => sheet.at(place).value)).toEqual([2, 3, 4, null]);
    expect(sheet.at('B2').formula).toBe('=SQRT(SINGLE($A$1:$A$3))');
    expect(leftOut).toEqual([]);
    expect(saved).toContain('<c r="B2"><f>SQRT($A$1:$A$3)</f><v>3</v></c>');
  });

  it('is read anew when the cell beside the formula changes', async () => {
    const { sheet } = await throughGrid(column('SQRT(A:A)'));
    await sheet.enter('A2', 25);
    expect(['B1', 'B2', 'B3'].map((place) => sheet.at(place).value)).toEqual([2, 5, 4]);
  });

  it('is an error where no cell of it stands beside the formula, or several do', async () => {
    const sheet = await calculateCells([
      [1, 2],
      [3, 4],
      ['=SINGLE(A1:A2)', '=SINGLE(A1:B2)', '=SINGLE(A1)', '=SINGLE(Z9)'],
    ]);
    onTestFinished(() => sheet.dispose());
    expect(['A3', 'B3', 'C3', 'D3'].map((place) => sheet.at(place).value)).toEqual(['#VALUE!', '#VALUE!', 1, 0]);
  });
});

describe('an array formula of the older kind', () => {
  it('comes back with the reach that it had, over several cells and in one', async () => {
    const { sheet, leftOut, saved } = await throughGrid([
      '<c r="A1"><v>4</v></c><c r="B1"><f t="array" ref="B1:C1">TRANSPOSE(A1:A2)</f><v>4</v></c><c r="C1"><v>9</v></c>',
      '<c r="A2"><v>9</v></c><c r="B2"><f t="array" ref="B2">SUM(SQRT(A1:A2))</f><v>5</v></c>',
      '<c r="B3"><f t="array" ref="B3">A1:A2*2</f><v>8</v></c>',
    ]);
    expect(leftOut).toEqual([]);
    expect(['B1', 'C1', 'B2', 'B3', 'B4'].map((place) => sheet.at(place).value)).toEqual([4, 9, 5, 8, null]);
    for (const kept of [
      '<c r="B1"><f t="array" ref="B1:C1">TRANSPOSE(A1:A2)</f><v>4</v></c>',
      '<c r="B2"><f t="array" ref="B2">SUM(SQRT(A1:A2))</f><v>5</v></c>',
      '<c r="B3"><f t="array" ref="B3">A1:A2*2</f><v>8</v></c>',
    ])
      expect(saved).toContain(kept);
    await sheet.enter('B2', '=SUM(SQRT(A1:A2))+0');
    const part = unzipSync(writeBook(bookOfGrid(sheet.grid)))['xl/worksheets/sheet1.xml'];
    expect(strFromU8(part as Uint8Array)).toContain('<c r="B2" cm="1"><f t="array" ref="B2">SUM(SQRT(A1:A2))+0</f>');
  });

  it('keeps its values where it fills more or fewer cells than its answer has, and says so', async () => {
    const { sheet, leftOut } = await throughGrid([
      '<c r="A1"><f t="array" ref="A1:A3">B1:B2*2</f><v>2</v></c><c r="B1"><v>1</v></c>',
      '<c r="A2"><v>4</v></c><c r="B2"><v>2</v></c>',
      '<c r="A3" t="e"><v>#N/A</v></c>',
    ]);
    expect(leftOut).toEqual([words.parts.unevenArrays]);
    expect(['A1', 'A2', 'A3'].map((place) => sheet.at(place).value)).toEqual([2, 4, '#N/A']);
  });

  it('fills what its answer has where that is not to be seen beforehand, and says so', async () => {
    const { sheet, leftOut } = await throughGrid([
      '<c r="A1"><f t="array" ref="A1:A2">_xlfn.UNIQUE(B1:B3)</f><v>1</v></c><c r="B1"><v>1</v></c>',
      '<c r="A2"><v>2</v></c><c r="B2"><v>2</v></c>',
      '<c r="B3"><v>2</v></c>',
    ]);
    expect(leftOut).toEqual([words.parts.fixedArrays]);
    expect(['A1', 'A2', 'A3'].map((place) => sheet.at(place).value)).toEqual([1, 2, null]);
  });
});
