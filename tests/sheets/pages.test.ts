import { describe, expect, it } from 'vitest';
import { areaOf } from '../../src/sheets/area.js';
import { starterSheets } from '../../src/sheets/index.js';
import { pagesOf } from '../../src/sheets/pages.js';
import type { SheetCell, StarterSheet } from '../../src/sheets/sheet.js';

/** Sides of A4 and of Letter in inches, less half an inch all around (ISO 216; ANSI/ASME Y14.1). */
const PAPERS = { A4: { long: 10.69, short: 7.27 }, Letter: { long: 10, short: 7.5 } } as const;
const papers = Object.entries(PAPERS);
const isLone = (row: readonly SheetCell[] = []) =>
  row[0]?.style === 'heading' && row.filter(({ text, formula }) => text || formula).length === 1;

describe.each(starterSheets)('the starter sheet $name on paper', (starter) => {
  const { widths, rows, headerRows, charts = [] } = starter;
  const pages = pagesOf(starter);
  const inches = (from: number, to: number) =>
    (widths.slice(from, to).reduce((sum, one) => sum + 7 * one + 5, 0) * pages.scale) / 100 / 96;
  const upper = areaOf(pages.areas[0] ?? '');

  it('has no letters below 8 points, and each page has room for its columns on A4 and on Letter', () => {
    expect((11 * pages.scale) / 100).toBeGreaterThanOrEqual(8);
    const labels = areaOf(pages.columns.replace(/([A-Z]+)/g, '$11')).columns;
    const last = Math.max(...pages.areas.map((area) => areaOf(area).columns));
    [0, ...pages.columnBreaks].forEach((from, page) => {
      const width = inches(from, pages.columnBreaks[page] ?? last) + (from === 0 ? 0 : inches(0, labels));
      for (const [paper, { long, short }] of papers)
        expect(width, `page ${page} on ${paper}`).toBeLessThanOrEqual(pages.turned === 'landscape' ? long : short);
    });
  });

  it('tears none of its parts, but for a list that is longer than a page', () => {
    const height = (from: number, to: number) => ((to - from) * 15 * pages.scale) / 100 / 72;
    [0, ...pages.rowBreaks].forEach((from, page) => {
      const to = pages.rowBreaks[page] ?? upper.rows;
      const all = height(from, to) + (from === 0 ? 0 : height(0, headerRows));
      for (const [paper, { long, short }] of papers)
        expect(all, `rows ${from + 1} to ${to} on ${paper}`).toBeLessThanOrEqual(
          pages.turned === 'landscape' ? short : long,
        );
    });
    for (const row of [...pages.rowBreaks, ...pages.areas.slice(1).map((area) => areaOf(area).row)]) {
      const empty = (rows[row - 1] ?? []).every(
        ({ text, formula, number }) => !text && !formula && number === undefined,
      );
      expect(empty || isLone(rows[row]), `row ${row + 1}`).toBe(true);
    }
  });

  it('shows all of its charts, and none on two pages', () => {
    for (const { place, title } of charts) {
      const { row, column, rows: high, columns: wide } = areaOf(place);
      expect(row + high, title).toBeLessThanOrEqual(upper.rows);
      expect(column + wide, title).toBeLessThanOrEqual(upper.columns);
      expect(
        pages.rowBreaks.filter((one) => one > row && one < row + high),
        title,
      ).toEqual([]);
      expect(
        pages.columnBreaks.filter((one) => one > column && one < column + wide),
        title,
      ).toEqual([]);
    }
  });

  it('repeats its titles and the names of its rows', () => {
    expect(pages.rows).toBe(`1:${headerRows}`);
    const list = pages.areas[1] ? rows.slice(areaOf(pages.areas[1]).row) : undefined;
    const named = list?.find((row) => row.some(({ style }) => style === 'input'));
    const first = Math.max(0, named?.findIndex(({ style }) => style === 'input') ?? 0);
    expect(pages.columns).toBe(`A:${'ABC'[first]}`);
  });
});

describe('the pages of a sheet', () => {
  const heading = (text: string): SheetCell[] => [{ text, style: 'heading' }];
  const figure = (number: number): SheetCell[] => [
    { text: 'Figure', style: 'label' },
    { number, style: 'input' },
  ];
  const plain: StarterSheet = {
    key: 'plain',
    name: 'Plain',
    summary: '',
    widths: [20, 10],
    headerRows: 1,
    names: {},
    rows: [[{ text: 'Title', style: 'title' }], heading('First'), figure(1), [], heading('Second'), figure(2)],
  };

  it('are upright and in the usual size where the sheet is small', () => {
    expect(pagesOf(plain)).toEqual({
      ...{ turned: 'portrait', scale: 100, areas: ['A1:B6'], rows: '1:1', columns: 'A:A' },
      ...{ rowBreaks: [], columnBreaks: [] },
    });
  });

  it('begin with the heading of a part that no longer fits', () => {
    const part = (name: string) => [heading(name), ...Array.from({ length: 29 }, (_, n) => figure(n)), []];
    const rows = [...plain.rows.slice(0, 1), ...part('One'), ...part('Two'), ...part('Three')];
    expect(pagesOf({ ...plain, rows }).rowBreaks).toEqual([32, 63]);
  });

  it('leave out explanations that have no room, unless a chart stands there', () => {
    const told = [{ text: 'Quantity' }, { text: 'What it is', style: 'heading' as const }];
    const long = [
      { text: 'Figure', style: 'label' as const },
      { text: 'long '.repeat(12), style: 'note' as const },
    ];
    const rows = [told, long, long];
    const wide: StarterSheet = { ...plain, widths: [80, 60], rows };
    expect(pagesOf(wide).areas).toEqual(['A1:B3']);
    const wider = { ...wide, widths: [120, 80] };
    expect(pagesOf(wider).areas).toEqual(['A1:A3']);
    const chart = { title: '', kind: 'lines', across: { title: '' }, upwards: { title: '' }, series: [] } as const;
    const drawn = pagesOf({ ...wider, charts: [{ ...chart, place: 'B2:B3' }] });
    expect([drawn.areas, drawn.columnBreaks]).toEqual([['A1:B3'], [1]]);
  });
});
