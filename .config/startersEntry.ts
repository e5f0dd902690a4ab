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
  const { sheets, ...rest } = bookOfGrid(grid);
  const { print } = starter;
  dispose();
  return { ...rest, sheets: sheets.map((sheet) => ({ ...sheet, ...(print ? { print } : {}) })) };
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

/** The bytes of each starter sheet's file in the two ways of saving. */
export async function startersBothWays() {
  const both: { readonly name: string; readonly formulas: Uint8Array; readonly values: Uint8Array }[] = [];
  for (const starter of starterSheets) {
    const book = await bookOf(starter);
    both.push({ name: starter.key, formulas: writeBook(book), values: writeBook(asValues(book)) });
  }
  return both;
}
