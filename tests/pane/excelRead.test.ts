import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { excelHost } from '../../taskpane/host/excel.js';
import type { FakeBook, FakeSheet } from './fakeBook.js';
import { fakeExcel } from './fakeExcel.js';
import { fakeParts } from './fakeParts.js';
import { said } from './said.js';

let book: FakeBook;
const put = (cells: Record<string, string | number>) => {
  const sheet = book.sheets.get('Sheet1') as FakeSheet;
  for (const [place, content] of Object.entries(cells)) sheet.contents.set(place, content);
};

beforeEach(() => {
  const fake = fakeExcel(fakeParts);
  book = fake.book;
  vi.stubGlobal('Excel', fake.Excel);
  vi.stubGlobal('Office', fake.Office);
});
afterEach(() => vi.unstubAllGlobals());

const range = (top: number, left: number, bottom: number | null, right: number | null, sheet = 'Sheet1') =>
  ({ kind: 'range', sheet, top, left, bottom, right }) as const;

describe('reading cells out of Excel', () => {
  it('gives the values of a rectangle, blanks as null, and what formulas result in', async () => {
    put({ '0,0': 'Dose', '0,1': 60, '1,0': '=NA()' });
    book.sheets.get('Sheet1')?.results.set('1,0', '#N/A');
    expect(await excelHost().read([range(0, 0, 1, 1)])).toEqual([
      [
        ['Dose', 60],
        ['#N/A', null],
      ],
    ]);
  });

  it('reads whole columns as far as the sheet is used, from its first row on', async () => {
    put({ '2,1': 5, '3,1': 7 });
    expect(await excelHost().read([range(0, 1, null, 1)])).toEqual([[[null], [null], [5], [7]]]);
  });

  it('finds names of the sheet before those of the workbook', async () => {
    put({ '0,0': 1, '1,0': 2 });
    book.names.set('dose', ['Sheet1', 0, 0, 1, 1]);
    const name = (sheet: string) => ({ kind: 'name', sheet, name: 'dose' }) as const;
    expect(await excelHost().read([name('Sheet1')])).toEqual([[[1]]]);
    book.sheets.get('Sheet1')?.names.set('dose', 'A2');
    expect(await excelHost().read([name('Sheet1')])).toEqual([[[2]]]);
  });

  it('reads all that a formula fills, and nothing where it fills nothing', async () => {
    put({ '0,0': 1, '1,0': 2 });
    book.sheets.get('Sheet1')?.spills.set('0,0', [2, 1]);
    const spill = (row: number) => ({ kind: 'spill', sheet: 'Sheet1', row, column: 0 }) as const;
    expect(await excelHost().read([spill(0), spill(1)])).toEqual([[[1], [2]], undefined]);
  });

  it('reads a table, or one column of it', async () => {
    put({ '1,0': 10, '1,1': 0.6, '2,0': 20, '2,1': 0.9 });
    book.tables.set('Log', { area: ['Sheet1', 1, 0, 2, 2], columns: ['Volume', 'Bar'] });
    const read = await excelHost().read([
      { kind: 'table', table: 'Log', column: 'Bar' },
      { kind: 'table', table: 'Log' },
      { kind: 'table', table: 'Log', column: 'Haze' },
      { kind: 'table', table: 'Other', column: 'Bar' },
    ]);
    expect(read).toEqual([
      [[0.6], [0.9]],
      [
        [10, 0.6],
        [20, 0.9],
      ],
      undefined,
      undefined,
    ]);
  });

  it('leaves out a sheet or a name that the workbook does not have, and reads the rest', async () => {
    put({ '0,0': 1 });
    const read = await excelHost().read([
      range(0, 0, 0, 0, 'Gone'),
      { kind: 'name', sheet: 'Sheet1', name: 'gone' },
      range(0, 0, 0, 0),
    ]);
    expect(read).toEqual([undefined, undefined, [[1]]]);
  });

  it('takes as many requests for a hundred places as for one', async () => {
    const requests = async (count: number) => {
      const before = book.syncs;
      await excelHost().read(Array.from({ length: count }, (_, row) => range(row, 0, row, 0)));
      return book.syncs - before;
    };
    expect(await requests(100)).toBe(await requests(1));
  });

  it('says in a sentence why Excel cannot be read', async () => {
    book.editing = true;
    expect(await said(excelHost().read([range(0, 0, 0, 0)]))).toContain('A cell is being edited');
  });
});
