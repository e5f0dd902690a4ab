import { describe, expect, it } from 'vitest';
import { shownSheetOf } from '../../../taskpane/workbook/xlsx/book.js';
import { opened, relations, rows, words } from './handMade.js';

const named = (...names: string[]) => opened({ sheets: names.map(() => rows()), names });

describe('the sheets of a file', () => {
  it('stand in their order, hidden ones too, under names with quotes or angle brackets', () => {
    const { book } = named('Beer &amp; more', '&lt;b&gt;1', "Year's");
    expect(book.sheets.map(({ name }) => name)).toEqual(['Beer & more', '<b>1', "Year's"]);
  });

  it('get a name that a sheet can have where the file has none, and the sentence says so', () => {
    const { book, leftOut } = named('', 'a/b', 'Plan', 'plan', 'x'.repeat(40));
    expect(book.sheets.map(({ name }) => name)).toEqual(['Sheet 1', 'Sheet 2', 'Plan', 'plan (2)', 'Sheet 5']);
    expect(leftOut).toEqual([words.parts.sheetNames]);
  });

  it('are hidden as the file hides them, and the one in front is one that is shown', () => {
    const before = '<bookViews><workbookView activeTab="1"/></bookViews>';
    const names = ['One" state="hidden', 'Two', 'Three" state="veryHidden'];
    const { book, leftOut } = opened({ sheets: [rows(), rows(), rows()], names, before });
    expect(leftOut).toEqual([]);
    expect(book.sheets.map(({ hidden }) => hidden)).toEqual(['hidden', undefined, 'veryHidden']);
    expect(shownSheetOf(book)).toBe(1);
    expect(shownSheetOf({ ...book, active: 'One' })).toBe(1);
  });

  it('are shown in part where the file hides all that are taken, and the sentence says so', () => {
    const { book, leftOut } = opened({ sheets: [rows(), rows()], names: ['One" state="hidden', 'Two" state="hidden'] });
    expect(book.sheets.map(({ hidden }) => hidden)).toEqual([undefined, 'hidden']);
    expect(leftOut).toEqual([words.parts.hiddenSheets]);
  });

  it('keep rows and columns hidden as far as the grid has them, and the sentence says so beyond', () => {
    const columns = '<cols><col min="2" max="3" width="0" hidden="1"/><col min="250" max="16384" hidden="1"/></cols>';
    const lines = '<sheetData><row r="2" hidden="1"/><row r="200000" hidden="1"/></sheetData>';
    const { book, leftOut } = opened({ sheets: [columns + lines] });
    expect(leftOut).toEqual([words.parts.hidden]);
    expect(book.sheets[0]?.hiddenRows).toEqual([1]);
    expect(book.sheets[0]?.hiddenColumns).toEqual([1, 2, 249, 250, 251, 252, 253, 254, 255]);
    expect(opened({ sheets: ['<sheetFormatPr defaultRowHeight="15" zeroHeight="1"/>'] }).leftOut).toEqual([
      words.parts.hidden,
    ]);
  });

  it('have the names that the file gives to a range, and the workbook those of values', () => {
    const name = (one: string, text: string, more = '') => `<definedName name="${one}" ${more}>${text}</definedName>`;
    const after = `<definedNames>${[
      name('dose', "'Year''s'!$B$2:$B$9"),
      name('twice', 'Year!$A$1'),
      name('twice', 'Plan!$A$1', 'localSheetId="0"'),
      name('price', '12.5'),
      name('moving', 'OFFSET(Plan!A1,1,0)'),
      name('elsewhere', '[1]Plan!$A$1'),
      name('_xlnm.Print_Titles', 'Plan!$1:$2', 'localSheetId="0"'),
    ].join('')}</definedNames>`;
    const { book, leftOut } = opened({ sheets: [rows(), rows()], names: ['Plan', "Year's"], after });
    expect(book.sheets.map(({ names }) => ({ ...names }))).toEqual([{}, { dose: 'B2:B9' }]);
    expect({ ...book.values }).toEqual({ price: '=12.5' });
    expect(leftOut).toEqual([words.parts.names, words.parts.sameNames]);
  });

  it('have their notes at the cells', () => {
    const note =
      '<comments><commentList><comment ref="B1"><text><r><t>Measured </t></r><r><t>daily</t></r></text></comment></commentList></comments>';
    const more = {
      'xl/worksheets/_rels/sheet1.xml.rels': relations(['rId1', 'comments', '../comments1.xml']),
      'xl/comments1.xml': note,
    };
    const { book } = opened({ sheets: [rows('<c r="B1"><v>1</v></c>')], more });
    expect(book.sheets[0]?.rows[0]?.[1]).toEqual({ value: 1, remark: 'Measured daily' });
  });
});
