import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { starterSheets } from '../src/sheets/index.js';
import { bookOfGrid } from '../taskpane/workbook/grid/toBook.js';
import type { Book } from '../taskpane/workbook/xlsx/book.js';
import { writeBook } from '../taskpane/workbook/xlsx/writeBook.js';
import type { Offer } from '../taskpane/workbook/xlsx/writeOffer.js';
import { calculateStarter } from '../tests/workbook/headless.js';

/** Calculates each starter sheet in the grid's engine and writes it as an .xlsx file. Gives the names of the files. */
export async function writeStarters(folder: string, offer: Offer): Promise<string[]> {
  mkdirSync(folder, { recursive: true });
  const names: string[] = [];
  for (const starter of starterSheets) {
    const { grid, dispose } = await calculateStarter(starter);
    const { sheets, ...rest } = bookOfGrid(grid);
    const { print } = starter;
    const book: Book = { ...rest, sheets: sheets.map((sheet) => ({ ...sheet, ...(print ? { print } : {}) })) };
    dispose();
    names.push(`${starter.key}.xlsx`);
    writeFileSync(join(folder, `${starter.key}.xlsx`), writeBook(book, offer));
  }
  return names;
}
