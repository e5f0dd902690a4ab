import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { excelHost } from '../../taskpane/host/excel.js';
import type { FakeBook, FakeSheet } from './fakeBook.js';
import { fakeExcel } from './fakeExcel.js';
import { fakeParts } from './fakeParts.js';
import { said } from './said.js';

let book: FakeBook;
const sheet = (name = 'Sheet1') => book.sheets.get(name) as FakeSheet;
const put = (cells: Record<string, string | number>) => {
  for (const [place, content] of Object.entries(cells)) sheet().contents.set(place, content);
};

beforeEach(() => {
  const fake = fakeExcel(fakeParts);
  book = fake.book;
  vi.stubGlobal('Excel', fake.Excel);
  vi.stubGlobal('Office', fake.Office);
});
afterEach(() => vi.unstubAllGlobals());

describe('reading a whole workbook out of Excel', () => {
  it('gives formulas and values of the used part of each sheet, with the names', async () => {
    put({ '2,1': 'Dose', '2,2': 60, '3,2': '=POWDER.DRYMASS(C3,0.5)' });
    sheet().results.set('3,2', 30);
    sheet().names.set('dose', 'C3');
    book.names.set('area', ['Sheet1', 2, 2, 1, 1]);
    expect(await excelHost().readAll()).toEqual({
      active: 'Sheet1',
      sheets: [
        {
          name: 'Sheet1',
          row: 2,
          column: 1,
          formulas: [
            ['Dose', 60],
            [null, '=POWDER.DRYMASS(C3,0.5)'],
          ],
          values: [
            ['Dose', 60],
            [null, 30],
          ],
        },
      ],
      names: [
        { name: 'area', formula: "='Sheet1'!$C$3" },
        { name: 'dose', formula: "='Sheet1'!C3", sheet: 'Sheet1' },
      ],
    });
  });

  it('takes a handful of requests for 30,000 cells, telling how far it is', async () => {
    for (let row = 0; row < 30_000; row++) put({ [`${row},0`]: row + 1 });
    const shares: number[] = [];
    const { sheets } = await excelHost().readAll({ onProgress: (share) => shares.push(share) });
    expect(sheets[0]?.values).toHaveLength(30_000);
    expect(shares).toEqual([2 / 3, 1]);
    // Names and sheets, used ranges, two pieces, and the run's own.
    expect(book.syncs).toBe(5);
  });

  it('stops between two pieces when it is cancelled, with the reason of the cancelling', async () => {
    for (let row = 0; row < 30_000; row++) put({ [`${row},0`]: row + 1 });
    const stop = new AbortController();
    const reading = excelHost().readAll({ signal: stop.signal, onProgress: () => stop.abort() });
    await expect(reading).rejects.toSatisfy((reason) => reason === stop.signal.reason);
  });

  it('says in a sentence that a cell is being edited', async () => {
    book.editing = true;
    expect(await said(excelHost().readAll())).toContain('A cell is being edited');
  });
});

describe('going to a place in Excel', () => {
  it('selects a range on its sheet', async () => {
    await excelHost().goTo({ kind: 'range', sheet: 'Sheet1', top: 4, left: 2, bottom: 6, right: 2 });
    expect(book.active).toEqual({ sheet: 'Sheet1', row: 4, column: 2 });
  });

  it('follows a name to its cell', async () => {
    sheet().names.set('dose', 'C3');
    await excelHost().goTo({ kind: 'name', sheet: 'Sheet1', name: 'dose' });
    expect(book.active).toEqual({ sheet: 'Sheet1', row: 2, column: 2 });
  });

  it('says in a sentence that the sheet is gone', async () => {
    const going = excelHost().goTo({ kind: 'range', sheet: 'Gone', top: 0, left: 0, bottom: 0, right: 0 });
    expect(await said(going)).toContain('This place is not in the workbook any more.');
  });
});

describe('a copy with values in Excel', () => {
  it('holds the values in place of formulas, and leaves the sheet as it was', async () => {
    put({ '0,0': 'Dose', '0,1': 60, '1,1': '=POWDER.DRYMASS(B1,0.5)' });
    sheet().results.set('1,1', 30);
    expect(await excelHost().copyWithValues('values')).toEqual({ name: 'Sheet1 values' });
    expect(Object.fromEntries(sheet('Sheet1 values').contents)).toEqual({ '0,0': 'Dose', '0,1': 60, '1,1': 30 });
    expect(sheet().contents.get('1,1')).toBe('=POWDER.DRYMASS(B1,0.5)');
  });

  it('gets a name of its own each time, never longer than Excel allows', async () => {
    await excelHost().copyWithValues('values');
    book.active.sheet = 'Sheet1';
    expect(await excelHost().copyWithValues('values')).toEqual({ name: 'Sheet1 values (2)' });
    book.sheets.set('A name of thirty-one characters', sheet());
    book.active.sheet = 'A name of thirty-one characters';
    const { name } = await excelHost().copyWithValues('values');
    expect(name).toBe('A name of thirty-on values');
  });

  it('is refused while a cell still shows #BUSY!, and nothing is added', async () => {
    put({ '0,0': '=POWDER.DRYMASS(1,0.5)' });
    sheet().results.set('0,0', '#BUSY!');
    expect(await said(excelHost().copyWithValues('values'))).toContain('Excel is still calculating this sheet');
    expect([...book.sheets.keys()]).toEqual(['Sheet1']);
  });
});
