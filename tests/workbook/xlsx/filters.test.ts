import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { filteredOutOf } from '../../../taskpane/workbook/grid/filters.js';
import { gridOfBook } from '../../../taskpane/workbook/grid/ofBook.js';
import { leavesColours } from '../../../taskpane/workbook/xlsx/filter.js';
import { writeBook } from '../../../taskpane/workbook/xlsx/writeBook.js';
import { opened, words } from './handMade.js';

const ROWS = [1, 2, 3, 4, 5];
const column = (inside: string, id = 0) => `<filterColumn colId="${id}">${inside}</filterColumn>`;

const sheetOf = (filter: string, hidden: readonly number[]) =>
  `<sheetData>${ROWS.map((n) => `<row r="${n}"${hidden.includes(n) ? ' hidden="1"' : ''}><c r="B${n}"><v>${n}</v></c></row>`).join('')}</sheetData>${filter}`;

const open = (inside: string, hidden: readonly number[] = [], ref = 'B1:C5') =>
  opened({ sheets: [sheetOf(`<autoFilter ref="${ref}">${inside}</autoFilter>`, hidden)] });

function written(book: ReturnType<typeof open>['book']) {
  const parts = unzipSync(writeBook(book));
  const part = (name: string) => strFromU8(parts[`xl/${name}.xml`] as Uint8Array);
  return { sheet: part('worksheets/sheet1'), workbook: part('workbook') };
}

describe('a filter of a file', () => {
  it('hides in the grid the rows that it hides in the file, and is written with its name and its rows', () => {
    const { book, leftOut } = open(column('<filters blank="1"><filter val="2"/><filter val="4"/></filters>'), [3, 5]);
    expect(leftOut).toEqual([]);
    expect(filteredOutOf(gridOfBook(book))).toEqual({ 'sheet-0': [2, 4] });
    const { sheet, workbook } = written(book);
    expect(sheet).toContain(
      '<autoFilter ref="B1:C5"><filterColumn colId="0"><filters blank="1"><filter val="2"/><filter val="4"/></filters></filterColumn></autoFilter>',
    );
    expect(sheet.match(/<row r="\d" hidden="1"/g)).toEqual(['<row r="3" hidden="1"', '<row r="5" hidden="1"']);
    expect(sheet).toContain('<sheetPr filterMode="1">');
    expect(workbook).toContain(
      `<definedName name="_xlnm._FilterDatabase" localSheetId="0" hidden="1">'Sheet 1'!$B$1:$C$5</definedName>`,
    );
  });

  it.each([
    ['days by their year', '<filters><dateGroupItem year="2025" dateTimeGrouping="year"/></filters>'],
    ['the largest', '<top10 val="3"/>'],
    ['more than the average', '<dynamicFilter type="aboveAverage"/>'],
    ['signs', '<iconFilter iconSet="3Arrows" iconId="0"/>'],
    ['texts before another', '<customFilters><customFilter operator="lessThan" val="M"/></customFilters>'],
    ['a mark that stands for itself', '<customFilters><customFilter val="~*"/></customFilters>'],
    ['an unknown colour', '<colorFilter dxfId="7"/>'],
    ['three conditions', `<customFilters>${'<customFilter val="1"/>'.repeat(3)}</customFilters>`],
    ['too many values', `<filters>${'<filter val="1"/>'.repeat(10_001)}</filters>`],
  ])('of a kind that the grid has not is told, and its rows are shown: %s', (_, inside) => {
    const { book, leftOut } = open(column(inside), [3]);
    expect(leftOut).toEqual([words.parts.filters]);
    expect(book.sheets[0]?.filter).toEqual({ range: 'B1:C5', columns: [] });
    expect(book.sheets[0]?.hiddenRows).toBeUndefined();
  });

  it('is found out anew where one of its columns is not taken', () => {
    const { book, leftOut } = open(
      `${column('<top10 val="3"/>')}${column('<filters><filter val="2"/></filters>', 1)}`,
      [3],
    );
    expect(leftOut).toEqual([words.parts.filters]);
    expect(book.sheets[0]?.filter).toEqual({
      range: 'B1:C5',
      columns: [{ column: 2, criterion: { kind: 'values', values: ['2'], blank: false } }],
    });
  });

  it('by several colours at once hides its rows in the file, which has no place for the rest', () => {
    const criterion = { kind: 'fills' as const, colours: ['#ffeb9c', undefined] };
    const sheet = { name: 'S', rows: [], widths: [], names: {}, headerRows: 0 };
    const book = {
      sheets: [{ ...sheet, filter: { range: 'A1:B4', columns: [{ column: 1, criterion }], hidden: [2] } }],
    };
    expect(leavesColours(book)).toBe(true);
    expect(written(book).sheet).toContain('<row r="3" hidden="1"/></sheetData><autoFilter ref="A1:B4"/>');
    const one = { ...criterion, colours: ['#ffeb9c'] };
    expect(
      leavesColours({ sheets: [{ ...sheet, filter: { range: 'A1:B4', columns: [{ column: 1, criterion: one }] } }] }),
    ).toBe(false);
  });

  it('is told where its column lies outside of it; rows outside that are hidden stay so by themselves', () => {
    expect(open(column('<filters><filter val="2"/></filters>', 2)).leftOut).toEqual([words.parts.filters]);
    const filters = column('<filters><filter val="2"/></filters>');
    const { book, leftOut } = open(filters, [2, 4], 'B1:C3');
    expect(leftOut).toEqual([]);
    expect(book.sheets[0]).toMatchObject({ filter: { hidden: [1] }, hiddenRows: [3] });
    expect(open('', [2], 'B1:C3').book.sheets[0]).toMatchObject({ filter: { columns: [] }, hiddenRows: [1] });
  });

  it.each(['B1:C1', 'B1:XFD9', 'B1:C200000', 'nowhere', ''])('is told where its range cannot be one: %s', (ref) => {
    const { book, leftOut } = open('', [], ref);
    expect(leftOut).toEqual([words.parts.filters]);
    expect(book.sheets[0]?.filter).toBeUndefined();
  });
});
