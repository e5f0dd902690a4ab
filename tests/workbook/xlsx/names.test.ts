import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it, onTestFinished } from 'vitest';
import { gridOfBook } from '../../../taskpane/workbook/grid/ofBook.js';
import { workbookOf } from '../../../taskpane/workbook/grid/place.js';
import { bookOfGrid } from '../../../taskpane/workbook/grid/toBook.js';
import { writeBook } from '../../../taskpane/workbook/xlsx/writeBook.js';
import { calculateCells, calculateWorkbook } from '../headless.js';
import { opened, readOf, rows } from './handMade.js';

const workbookPart = (bytes: Uint8Array) => strFromU8(unzipSync(bytes)['xl/workbook.xml'] as Uint8Array);

describe('a name in the grid', () => {
  it('is in the file what it is in the grid: a place or a value that all sheets know', async () => {
    const sheet = await calculateCells([[100]]);
    onTestFinished(() => sheet.dispose());
    const workbook = workbookOf(sheet.grid);
    workbook.insertDefinedName('VAT', '=0.19');
    workbook.insertDefinedName('masses', "'Sheet 1'!$A$1:$A$1");
    workbook.insertDefinedName('masses.all', "'Sheet 1'!$A:$A");
    await sheet.enter('B1', '=A1*VAT');
    await sheet.enter('A2', '=SUM(masses)');
    const bytes = writeBook(bookOfGrid(sheet.grid));
    // ECMA-376, part 1, 18.2.5: without localSheetId a name belongs to the whole workbook.
    expect(workbookPart(bytes)).toContain('<definedName name="VAT">0.19</definedName>');
    expect(workbookPart(bytes)).toContain(`<definedName name="masses">'Sheet 1'!$A$1:$A$1</definedName>`);
    expect(workbookPart(bytes)).toContain(`<definedName name="masses.all">'Sheet 1'!$A:$A</definedName>`);
    const again = await calculateWorkbook(gridOfBook(readOf(bytes).book));
    onTestFinished(() => again.dispose());
    expect([again.at('B1').value, again.at('A2').value]).toEqual([19, 100]);
    expect(workbookPart(writeBook(bookOfGrid(again.grid)))).toBe(workbookPart(bytes));
  });
});

describe('a name in a file', () => {
  const round = async (...names: readonly string[]) => {
    const { book } = opened({
      sheets: [rows('<c r="A1"><v>5</v></c><c r="B1"><f>vat*100</f></c>'), rows()],
      names: ['Plan', 'Year'],
      after: `<definedNames>${names.join('')}</definedNames>`,
    });
    const sheet = await calculateWorkbook(gridOfBook(book));
    onTestFinished(() => sheet.dispose());
    return { sheet, part: workbookPart(writeBook(bookOfGrid(sheet.grid))) };
  };

  it('is found whatever letters are large', async () => {
    const { sheet } = await round('<definedName name="VAT">0.19</definedName>');
    expect(sheet.at('B1').value).toBe(19);
  });

  it('stays with its one sheet, and one that the grid cannot use is there again when the workbook is saved', async () => {
    const names = [
      '<definedName name="VAT">0.19</definedName>',
      '<definedName name="dose" localSheetId="1">Plan!$A$1</definedName>',
      '<definedName name="moving">OFFSET(Plan!$A$1,1,0)</definedName>',
      '<definedName name="inner" hidden="1">Plan!$A$1</definedName>',
      '<definedName name="twice">Plan!$A$1</definedName>',
      '<definedName name="twice" localSheetId="1">Year!$A$1</definedName>',
    ];
    const { part } = await round(...names);
    for (const name of names) expect(part.replaceAll("'", '')).toContain(name);
  });

  it('is not written back where what it reads is in no file', async () => {
    const { part } = await round(
      '<definedName name="far">[1]Plan!$A$1</definedName>',
      '<definedName name="gone">SUM(Gone!$A$1)</definedName>',
    );
    expect(part).not.toMatch(/far|gone/);
  });
});
