import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { starterSheets } from '../../src/sheets/index.js';
import { pagesOf } from '../../src/sheets/pages.js';
import { MARGINS } from '../../src/sheets/paper.js';
import type { StarterSheet } from '../../src/sheets/sheet.js';
import { excelHost } from '../../taskpane/host/excel.js';
import type { FakeBook, FakeSheet } from './fakeBook.js';
import { fakeExcel } from './fakeExcel.js';
import { fakeParts } from './fakeParts.js';

let book: FakeBook;
const sheet = (name = 'Sheet1') => book.sheets.get(name) as FakeSheet;

beforeEach(() => {
  const fake = fakeExcel(fakeParts);
  book = fake.book;
  vi.stubGlobal('Excel', fake.Excel);
  vi.stubGlobal('Office', fake.Office);
});
afterEach(() => vi.unstubAllGlobals());

describe('inserting a starter sheet into Excel', () => {
  const [starter] = starterSheets as readonly [StarterSheet, ...StarterSheet[]];

  it('builds every cell, name, width and header row of it on a tab of its own', async () => {
    await excelHost().insertSheet(starter);
    const built = sheet(starter.name);
    for (const [row, cells] of starter.rows.entries()) {
      for (const [column, { number, formula, validation }] of cells.entries()) {
        if (number !== undefined) expect(built.contents.get(`${row},${column}`)).toBe(number);
        if (formula !== undefined) expect(built.contents.get(`${row},${column}`)).toBe(formula);
        if (validation)
          expect(built.validations.get(`${row},${column}`)).toMatchObject({ errorAlert: { style: 'Warning' } });
      }
    }
    expect(Object.fromEntries(built.names)).toEqual(starter.names);
    expect(built.widths.size).toBe(starter.widths.length);
    expect(built.frozen).toEqual({ rows: starter.headerRows, columns: 0 });
    expect(built.printed).toBe(`$1:$${starter.headerRows}`);
    expect(book.active.sheet).toBe(starter.name);
  });

  it('keeps titles and labels of a wide sheet in view', async () => {
    const wide = starterSheets.find(({ labelColumns }) => labelColumns) as StarterSheet;
    await excelHost().insertSheet(wide);
    expect(sheet(wide.name).frozen).toEqual({ rows: wide.headerRows, columns: 1 });
  });

  it.each(starterSheets)('prints $name as the sheet is laid out, on the paper that the user has', async (one) => {
    await excelHost().insertSheet(one);
    const { turned, scale, areas, rows, columns, rowBreaks, columnBreaks } = pagesOf(one);
    const fixed = (lines: string) =>
      lines
        .split(':')
        .map((line) => `$${line}`)
        .join(':');
    expect(turned).toBe('landscape');
    expect(sheet(one.name).printed).toBe(fixed(rows ?? ''));
    const { rowBreaks: down = [], columnBreaks: across = [], margins, ...page } = sheet(one.name).page;
    expect(page).toEqual({ orientation: 'Landscape', zoom: { scale }, areas, columns: fixed(columns) });
    expect(margins).toEqual({ unit: 'Inches', ...MARGINS });
    expect(down).toEqual(rowBreaks.map((row) => `A${row + 1}`));
    expect(across).toEqual(columnBreaks.map((column) => `${String.fromCharCode(65 + column)}1`));
  });

  it('colours by the sheet’s own conditions, by weight or slant as well', async () => {
    await excelHost().insertSheet(starter);
    const { conditions } = sheet(starter.name);
    expect(conditions.map(({ kind, range, 'rule.formula': formula }) => ({ kind, range, formula }))).toEqual(
      starter.conditions?.map(({ range, formula }) => ({ kind: 'Custom', range, formula })),
    );
    for (const set of conditions) {
      expect(set['format.fill.color']).toMatch(/^#/);
      expect(set['format.font.bold'] || set['format.font.italic']).toBe(true);
    }
  });

  it.each(starterSheets)('draws every chart of $name natively where nothing else stands', async (one) => {
    await excelHost().insertSheet(one);
    const { charts } = sheet(one.name);
    expect(charts.map(({ place, 'title.text': title }) => ({ place, title }))).toEqual(
      one.charts?.map(({ place, title }) => ({ place, title })),
    );
    one.charts?.forEach(({ across, upwards, series, kind }, index) => {
      const drawn = charts[index] ?? {};
      expect(drawn['axes.categoryAxis.title.text']).toBe(across.title);
      expect(drawn['axes.valueAxis.title.text']).toBe(upwards.title);
      expect(String(drawn.type).startsWith(kind === 'bars' ? 'Bar' : 'XYScatter')).toBe(true);
      series.forEach((line, at) => {
        expect(drawn[`series.${at}.name`]).toBe(line.name);
        expect(drawn[`series.${at}.across`]).toBe(line.across);
        expect(drawn[`series.${at}.upwards`]).toBe(line.upwards);
      });
      expect(drawn[`series.${series.length}.name`]).toBeUndefined();
    });
  });

  it('gives a second copy a name of its own and leaves the first alone', async () => {
    await excelHost().insertSheet(starter);
    sheet(starter.name).contents.set('0,0', 'mine');
    await excelHost().insertSheet(starter);
    expect([...book.sheets.keys()]).toEqual(['Sheet1', starter.name, `${starter.name} (2)`]);
    expect(sheet(starter.name).contents.get('0,0')).toBe('mine');
  });

  it('takes a half-built tab away when Excel breaks off', async () => {
    const broken = {
      ...starter,
      names: new Proxy(starter.names, {
        ownKeys: () => {
          throw new Error('Broken off.');
        },
      }),
    };
    await expect(excelHost().insertSheet(broken)).rejects.toThrow('Broken off.');
    expect([...book.sheets.keys()]).toEqual(['Sheet1']);
  });
});
