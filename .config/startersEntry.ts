import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { starterSheets } from '../src/sheets/index.js';
import type { StarterSheet } from '../src/sheets/sheet.js';
import { bookOfGrid } from '../taskpane/workbook/grid/toBook.js';
import { asValues } from '../taskpane/workbook/xlsx/asValues.js';
import type { Book } from '../taskpane/workbook/xlsx/book.js';
import { writeBook } from '../taskpane/workbook/xlsx/writeBook.js';
import type { Offer } from '../taskpane/workbook/xlsx/writeOffer.js';
import { calculateStarter } from '../tests/workbook/headless.js';

/** A starter sheet, calculated in the grid's engine, as a workbook. */
async function bookOf(starter: StarterSheet): Promise<Book> {
  const { grid, dispose } = await calculateStarter(starter);
  const book = bookOfGrid(grid);
  dispose();
  return book;
}

/** Writes each starter sheet as an .xlsx file. Gives the names of the files. */
export async function writeStarters(folder: string, offer: Offer): Promise<string[]> {
  mkdirSync(folder, { recursive: true });
  const names: string[] = [];
  for (const starter of starterSheets) {
    names.push(`${starter.key}.xlsx`);
    writeFileSync(join(folder, `${starter.key}.xlsx`), writeBook(await bookOf(starter), offer));
  }
  return names;
}

/** The numbers by which a file names the paper that it is printed on (ECMA-376, part 1, 18.3.1.63). */
const PAPERS = { Letter: 1, A4: 9 } as const;

const onPaper = (book: Book, paperSize: number): Book => ({
  ...book,
  sheets: book.sheets.map((sheet) => ({
    ...sheet,
    page: { ...sheet.page, paper: { ...sheet.page?.paper, paperSize: String(paperSize) } },
  })),
});

/** The bytes of each starter sheet's file in the two ways of saving, and for each paper. */
export async function startersBothWays() {
  const both = [];
  for (const starter of starterSheets) {
    const book = await bookOf(starter);
    both.push({
      name: starter.key,
      formulas: writeBook(book),
      values: writeBook(asValues(book)),
      papers: Object.entries(PAPERS).map(([paper, size]) => ({ paper, bytes: writeBook(onPaper(book, size)) })),
    });
  }
  return both;
}
