import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { cellReference } from '../../taskpane/host/address.js';
import { excelHost } from '../../taskpane/host/excel.js';
import type { Block, Selection } from '../../taskpane/host/host.js';
import { NotEmpty } from '../../taskpane/host/refusal.js';
import type { FakeBook, FakeSheet } from './fakeBook.js';
import { fakeExcel } from './fakeExcel.js';
import { fakeParts } from './fakeParts.js';
import { said } from './said.js';

let book: FakeBook;
const sheet = (name = 'Sheet1') => book.sheets.get(name) as FakeSheet;

beforeEach(() => {
  const fake = fakeExcel(fakeParts);
  book = fake.book;
  vi.stubGlobal('Excel', fake.Excel);
  vi.stubGlobal('Office', fake.Office);
});
afterEach(() => vi.unstubAllGlobals());

const block: Block = {
  rows: [
    [{ text: '1/m', style: 'unit' }, { number: 0.65, style: 'input', format: '0.0 %' }, {}],
    [{ text: 'Dose' }, { formula: (at) => `=POWDER.DRYMASS(100,${at(0, 1)})`, style: 'result' }],
  ],
};

describe('the selected cell in Excel', () => {
  it('is told with sheet, address, formula and value', async () => {
    sheet().contents.set('3,1', '=POWDER.DRYMASS(100,65)');
    sheet().results.set('3,1', '#VALUE!');
    book.active = { sheet: 'Sheet1', row: 3, column: 1 };
    expect(await excelHost().selection()).toEqual({
      sheet: 'Sheet1',
      address: 'B4',
      formula: '=POWDER.DRYMASS(100,65)',
      value: '#VALUE!',
    });
  });

  const spilling = () => {
    sheet().contents.set('1,0', '=POWDER.DRYMASS(D1:D3,0.1)');
    sheet().contents.set('3,0', 90);
    sheet().spills.set('1,0', [3, 1]);
    book.active = { sheet: 'Sheet1', row: 3, column: 0 };
  };

  it('is told with the formula that spills into it, and where that stands', async () => {
    spilling();
    expect(await excelHost().selection()).toEqual({
      sheet: 'Sheet1',
      address: 'A4',
      spilledFrom: { place: cellReference('Sheet1', 1, 0), formula: '=POWDER.DRYMASS(D1:D3,0.1)' },
      value: 90,
    });
    book.active = { sheet: 'Sheet1', row: 1, column: 0 };
    expect(await excelHost().selection()).toMatchObject({ address: 'A2', formula: '=POWDER.DRYMASS(D1:D3,0.1)' });
  });

  it('is told without it where Excel is too old to know', async () => {
    spilling();
    book.knowsSpills = false;
    expect(await excelHost().selection()).toEqual({ sheet: 'Sheet1', address: 'A4', value: 90 });
  });

  it('is null where the cell is blank', async () => {
    expect(await excelHost().selection()).toEqual({ sheet: 'Sheet1', address: 'A1', value: null });
  });

  it('is told again at each change, until the listener is stopped', async () => {
    const heard: Selection[] = [];
    const stop = excelHost().onSelection((one) => heard.push(one));
    await vi.waitFor(() => expect(book.listeners()).toBe(3));
    await book.select(4, 2);
    expect(heard.at(-1)?.address).toBe('C5');
    stop();
    await vi.waitFor(() => expect(book.listeners()).toBe(0));
    const before = heard.length;
    await book.select(0, 0);
    expect(heard).toHaveLength(before);
  });

  it('is passed over in silence while a cell is edited, and told afterwards', async () => {
    const heard: Selection[] = [];
    excelHost().onSelection((one) => heard.push(one));
    await vi.waitFor(() => expect(book.listeners()).toBe(3));
    book.editing = true;
    await book.calculated();
    expect(heard).toEqual([]);
    book.editing = false;
    await book.calculated();
    expect(heard.at(-1)?.address).toBe('A1');
  });
});

describe('writing a block into Excel', () => {
  it('puts labels, values, formats and the formula with its addresses at the selection', async () => {
    book.active = { sheet: 'Sheet1', row: 2, column: 1 };
    expect(await excelHost().write(block)).toEqual({ address: 'B3:D4' });
    expect(Object.fromEntries(sheet().contents)).toEqual({
      '2,1': "'1/m",
      '2,2': 0.65,
      '3,1': 'Dose',
      '3,2': '=POWDER.DRYMASS(100,C3)',
    });
    expect(sheet().formats.get('2,2')).toBe('0.0 %');
    expect(sheet().looks.get('2,2')).toMatchObject({ 'fill.color': expect.any(String), 'font.bold': false });
  });

  it.each(['=1+1', '+1', '-5', '@x', '5-10', '1.200', 'TRUE', 'Batch 7'])('keeps the text %s a text', async (text) => {
    await excelHost().write({ rows: [[{ text }]] });
    expect(sheet().contents.get('0,0')).toBe(`'${text}`);
  });

  it('refuses to overwrite, naming the range and the first cell in the way, and writes nothing', async () => {
    sheet().contents.set('1,2', 7);
    const refusal = excelHost().write(block);
    await expect(refusal).rejects.toBeInstanceOf(NotEmpty);
    expect(await said(refusal)).toContain('A1:C2 is not empty: something stands in C2. Nothing was written.');
    expect([...sheet().contents]).toEqual([['1,2', 7]]);
  });

  it('overwrites the whole block when told to, so that an answer can spill', async () => {
    sheet().contents.set('1,2', 7);
    await excelHost().write(block, { overwrite: true });
    expect(sheet().contents.has('1,2')).toBe(false);
  });

  it('widens columns for labels and never narrows one', async () => {
    sheet().widths.set(0, 300);
    await excelHost().write({ rows: [[{ text: 'Body feed' }, { text: 'A label that needs some room' }]] });
    expect(sheet().widths.get(0)).toBe(300);
    expect(sheet().widths.get(1)).toBeGreaterThan(100);
  });

  it('takes two requests to the workbook, however large the block is', async () => {
    const rows = Array.from({ length: 200 }, () => [{ number: 1, style: 'input' as const }, { number: 2 }]);
    await excelHost().write({ rows });
    // The run itself closes with a third one that has nothing left to do.
    expect(book.syncs).toBe(3);
  });

  it('says in a sentence that a cell is being edited', async () => {
    book.editing = true;
    expect(await said(excelHost().write(block))).toContain('A cell is being edited: finish the entry, then try again.');
  });

  it('says in a sentence that the block does not fit', async () => {
    book.active = { sheet: 'Sheet1', row: 1_048_575, column: 0 };
    expect(await said(excelHost().write(block))).toMatch(/does not fit on the sheet/);
  });
});
