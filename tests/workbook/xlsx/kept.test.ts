import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it, onTestFinished } from 'vitest';
import { markMoves } from '../../../taskpane/workbook/grid/kept.js';
import { gridOfBook } from '../../../taskpane/workbook/grid/ofBook.js';
import { workbookOf } from '../../../taskpane/workbook/grid/place.js';
import { bookOfGrid } from '../../../taskpane/workbook/grid/toBook.js';
import { writeBook } from '../../../taskpane/workbook/xlsx/writeBook.js';
import { calculateWorkbook } from '../headless.js';
import { opened, rows, words } from './handMade.js';

const names = `<definedNames><definedName name="inner" hidden="1">Plan!$B$1</definedName>
  <definedName name="moving">OFFSET(Plan!$B$1,0,0)</definedName></definedNames>`;

async function open(cell: string) {
  const { book, leftOut } = opened({
    sheets: [rows(`${cell}<c r="B1"><v>3</v></c><c r="C1"><f>A1&amp;"!"</f></c>`), rows(), rows()],
    names: ['Plan', 'May', 'June'],
    after: names,
  });
  const sheet = await calculateWorkbook(gridOfBook(book));
  onTestFinished(() => sheet.dispose());
  const written = () =>
    strFromU8(unzipSync(writeBook(bookOfGrid(sheet.grid)))['xl/worksheets/sheet1.xml'] as Uint8Array);
  return { sheet, leftOut, written };
}

describe('a formula that the grid cannot calculate', () => {
  it.each([
    ['functions that it does not have', 'CUBEVALUE("a","b")', words.parts.unknownFunctions],
    ['functions of another add-in', '_xldudf_OTHER_RATE(B1)', words.parts.unknownFunctions],
    ['an answer of several cells read by its mark', 'SUM(_xlfn.ANCHORARRAY(B1))', words.parts.unknownFunctions],
    ['a hidden name', 'inner*2', words.parts.unknownNames],
    ['a computed name', 'SUM(moving)', words.parts.unknownNames],
    ['several sheets at once', 'SUM(May:June!A1)', words.parts.severalSheets],
    ['a choice within a sum of arrays', 'SUMPRODUCT(IF(B1:B5=1,B1:B5,0))', words.parts.intersections],
    ['a line through figures that are calculated first', 'SUM(LINEST(LN(B1:B5),C1:C5))', words.parts.intersections],
    ['a function of its own', '_xlfn.LAMBDA(_xlpm.x,_xlpm.x+1)(B1)', words.parts.heavyFormulas],
  ])('keeps its last value, says so, and is in the file again: %s', async (_, formula, said) => {
    const stored = formula.replaceAll('"', '&quot;');
    const { sheet, leftOut, written } = await open(`<c r="A1"><f>${stored}</f><v>7</v></c>`);
    expect(leftOut).toContain(said);
    expect(sheet.at('A1')).toMatchObject({ value: 7, kept: formula });
    expect(sheet.at('C1').value).toBe('7!');
    expect(written()).toContain(`<c r="A1"><f>${stored}</f><v>7</v></c>`);
    await sheet.enter('A1', 8);
    expect(sheet.at('A1').kept).toBeUndefined();
    expect(written()).toContain('<c r="A1"><v>8</v></c>');
  });

  it.each([
    ['a table', 'SUM(Powders[Dose])', words.parts.tableFormulas],
    ['another workbook', '[1]Plan!A1*2', words.parts.external],
  ])('keeps its last value alone where the file would not hold what it reads: %s', async (_, formula, said) => {
    const { sheet, leftOut, written } = await open(`<c r="A1"><f>${formula}</f><v>7</v></c>`);
    expect(leftOut).toContain(said);
    expect(sheet.at('A1').value).toBe(7);
    expect(written()).toContain('<c r="A1"><v>7</v></c>');
  });

  it('keeps the last value of a data table', async () => {
    const table = '<c r="A1"><f t="dataTable" ref="A1:A2" dt2D="0" r1="B1"/><v>7</v></c>';
    const { sheet, leftOut } = await open(table);
    expect(leftOut).toContain(words.parts.dataTables);
    expect(sheet.at('A1').value).toBe(7);
  });

  it('keeps an error, a text and a logical value as it stood', async () => {
    for (const [inside, stored] of [
      ['t="e"', '<v>#NAME?</v>'],
      ['t="str"', '<v>none</v>'],
      ['t="b"', '<v>1</v>'],
    ]) {
      const cell = `<c r="A1" ${inside}><f>inner</f>${stored}</c>`;
      const { written } = await open(cell);
      expect(written()).toContain(cell);
    }
  });

  it('is left to its value once cells have moved, since it would not have moved along', async () => {
    const { sheet, written } = await open('<c r="A1"><f>inner*2</f><v>7</v></c>');
    markMoves(sheet.grid);
    workbookOf(sheet.grid).getActiveSheet().insertRowsAfter(3, 1);
    expect(written()).toContain('<c r="A1"><v>7</v></c>');
  });

  it('is left to its value once a sheet that it reads has another name', async () => {
    const { sheet, written } = await open('<c r="A1"><f>SUM(May:June!A1)</f><v>7</v></c>');
    workbookOf(sheet.grid).getSheetByName('June')?.setName('July');
    expect(written()).toContain('<c r="A1"><v>7</v></c>');
  });
});
