import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { starterSheets } from '../../../src/sheets/index.js';
import { deserializeRangeWithSheet } from '../../../taskpane/workbook/engine/formula.js';
import { bookOfGrid } from '../../../taskpane/workbook/grid/toBook.js';
import type { Book, BookCell } from '../../../taskpane/workbook/xlsx/book.js';
import { pageOfStarter } from '../../../taskpane/workbook/xlsx/starterPage.js';
import { writeBook } from '../../../taskpane/workbook/xlsx/writeBook.js';
import { calculateStarter } from '../headless.js';
import { readOf } from './handMade.js';

const OFFER = { id: '098b3cf6-6077-476e-8a4f-c023d196bfdc', version: '0.1.0.0' };

const partsOf = (bytes: Uint8Array) =>
  Object.fromEntries(Object.entries(unzipSync(bytes)).map(([name, data]) => [name, strFromU8(data)]));

function readAgain(book: Book): { book: Book; leftOut: readonly string[] } {
  return readOf(writeBook(book, OFFER));
}

const cellsOf = (book: Book): (readonly [string, BookCell])[] =>
  book.sheets.flatMap(({ name, rows }) =>
    rows.flatMap((row, r) => (row ?? []).flatMap((cell, c) => (cell ? [[`${name} ${r} ${c}`, cell] as const] : []))),
  );

/** The places that answers of formulas elsewhere fill. */
const filledBySpills = (book: Book): ReadonlySet<unknown> =>
  new Set(
    cellsOf(book).flatMap(([place, { spill }]) => {
      if (!spill) return [];
      const sheet = place.replace(/ \d+ \d+$/, '');
      const { startRow, endRow, startColumn, endColumn } = deserializeRangeWithSheet(spill).range;
      const places: string[] = [];
      for (let r = startRow; r <= endRow; r++)
        for (let c = startColumn; c <= endColumn; c++) places.push(`${sheet} ${r} ${c}`);
      return places.filter((one) => one !== place);
    }),
  );

const one = (cell: BookCell): Book => ({
  sheets: [{ name: 'S', rows: [[cell]], widths: [], names: {}, headerRows: 0 }],
});

describe.each(starterSheets)('the starter sheet $name, written into a file and read again', (starter) => {
  it('has the same answers, formulas, formats, rules and names', async () => {
    const sheet = await calculateStarter(starter);
    const book = bookOfGrid(sheet.grid);
    sheet.dispose();
    const { book: again, leftOut } = readAgain(book);
    expect(leftOut).toEqual([]);
    const told = (from: Book) =>
      cellsOf(from).flatMap(([place, { value, error, formula, spill, format, validation }]) =>
        value === undefined && formula === undefined && error === undefined
          ? []
          : [[place, value ?? null, error, formula, spill, format ?? 'General', validation?.limit, validation?.of]],
      );
    const written = told(book);
    expect(written.length).toBeGreaterThan(100);
    const read = new Map(told(again).map((line) => [line[0], line]));
    const filled = filledBySpills(book);
    // What a formula elsewhere fills is left to that formula; its empty answer is no text in a file.
    for (const line of written) if (!filled.has(line[0]) && line[1] !== '') expect(read.get(line[0])).toEqual(line);
    expect(again.sheets[0]?.names).toEqual(book.sheets[0]?.names);
    expect(again.sheets[0]).toMatchObject({ headerRows: starter.headerRows, labelColumns: starter.labelColumns ?? 0 });
    expect(again.sheets[0]?.conditions?.length).toBe(starter.conditions?.length);
    const { grows: _, ...page } = pageOfStarter(starter);
    const said = Object.entries(page).filter(([, what]) => what !== true && what.length !== 0);
    expect(again.sheets[0]?.page).toEqual(Object.fromEntries(said));
  });
});

describe('a written workbook', () => {
  it('stores functions of the add-in as Excel does, and leaves texts that look like them alone', () => {
    const parts = partsOf(writeBook(one({ formula: '=POWDER.DRYMASS(A2,"POWDER.DRYMASS(")', value: 35 })));
    expect(parts['xl/worksheets/sheet1.xml']).toContain(
      '<f>_xldudf_POWDER_DRYMASS(A2,&quot;POWDER.DRYMASS(&quot;)</f><v>35</v>',
    );
  });

  it('stores a spilled formula as a dynamic array over the cells that it fills', () => {
    const cell = { formula: '=POWDER.DRYMASS(A2:A4,0.5)', spill: 'A1:A3', value: 1 };
    const sheet = partsOf(writeBook(one(cell)))['xl/worksheets/sheet1.xml'];
    expect(sheet).toContain('<c r="A1" cm="1"><f t="array" ref="A1:A3">');
  });

  it('keeps text a text whatever its first character, and characters that XML does not allow', () => {
    for (const text of ['=1+1', '+1', '-1', '@SUM', '<b>&"', ' two  spaces ', 'line\nline', 'bell\u0007']) {
      const [[, cell] = []] = cellsOf(readAgain(one({ value: text })).book);
      expect(cell).toMatchObject({ value: text });
      expect(cell?.formula).toBeUndefined();
    }
  });

  it('keeps errors, truths and numbers to the last digit', () => {
    for (const cell of [{ error: '#N/A', formula: '=NA()' }, { value: true }, { value: 0.1 + 0.2 }, { value: 1e-300 }])
      expect(cellsOf(readAgain(one(cell)).book)[0]?.[1]).toMatchObject(cell);
  });

  it('offers the add-in of the manifest on opening, and prints its header rows on each page', () => {
    const [sheet] = one({ value: 1 }).sheets;
    const parts = partsOf(writeBook({ sheets: [{ ...(sheet as Book['sheets'][0]), headerRows: 2 }] }, OFFER));
    expect(parts['xl/webextensions/webextension.xml']).toContain(OFFER.id);
    expect(parts['_rels/.rels']).toContain('webextensiontaskpanes');
    expect(parts['xl/workbook.xml']).toContain(`'S'!$1:$2`);
  });

  it.each([
    ['narrow', [20, 20], undefined, 'orientation="portrait" scale="100"'],
    ['wide', [40, 40, 60], undefined, 'orientation="landscape" scale="94"'],
    ['too wide for a page', [40, 60, 60, 60, 60], undefined, 'orientation="landscape" scale="73"'],
    ['too wide, with letters of 9 points', [40, 60, 60, 60, 60], 9, 'orientation="landscape" scale="89"'],
    ['too wide, with letters of 6 points', [40, 60, 60, 60, 60], 6, 'orientation="landscape" scale="100"'],
  ])('prints no letters below 8 points that are not so small themselves: one that is %s', (_, widths, size, said) => {
    const row = widths.map((): BookCell => ({ value: 1, ...(size ? { look: { size } } : {}) }));
    const sheet = { name: 'S', rows: [row], widths, names: {}, headerRows: 0 };
    const part = partsOf(writeBook({ sheets: [sheet] }))['xl/worksheets/sheet1.xml'];
    expect(part).toContain(`<pageSetup ${said}/>`);
    expect(part).toContain('<pageSetUpPr fitToPage="0"/>');
  });

  it('asks no program to calculate it anew on opening', () => {
    const part = partsOf(writeBook(one({ formula: '=1+1', value: 2 })))['xl/workbook.xml'];
    // ECMA-376, part 1, 18.2.2: where it comes after the names.
    expect(part).toMatch(
      /<\/sheets>(?:<definedNames>.*<\/definedNames>)?<calcPr calcId="\d+" fullCalcOnLoad="0"\/><\/workbook>$/,
    );
  });

  it('is the same file, byte for byte, each time', () => {
    expect(writeBook(one({ value: 1 }), OFFER)).toEqual(writeBook(one({ value: 1 }), OFFER));
  });
});
