import { en } from '../../taskpane/texts/en.js';
import { gridOfBook, shownFirst } from '../../taskpane/workbook/grid/ofBook.js';
import { workbookOf } from '../../taskpane/workbook/grid/place.js';
import { bookOfGrid } from '../../taskpane/workbook/grid/toBook.js';
import { LIMITS } from '../../taskpane/workbook/xlsx/limits.js';
import { writeBook } from '../../taskpane/workbook/xlsx/writeBook.js';
import { calculateWorkbook } from '../workbook/headless.js';
import { readOf } from '../workbook/xlsx/handMade.js';
import type { Notice } from './compare.js';

export interface Through {
  readonly bytes: Uint8Array;
  /** What the notice of opening says was not taken. */
  readonly told: readonly Notice[];
}

/** The key of the dictionary behind each phrase of the notice. */
const KEYS = new Map(
  Object.entries(en.open.parts).map(([key, words]) => [
    typeof words === 'string' ? words : words(LIMITS.rows, LIMITS.columns),
    key as Notice,
  ]),
);

function keyOf(phrase: string): Notice {
  const key = KEYS.get(phrase);
  if (!key) throw new Error(`The notice says what the dictionary does not: ${phrase}`);
  return key;
}

/** Opens a file as the page does, lets the grid calculate, and saves it. */
export async function throughGrid(bytes: Uint8Array): Promise<Through> {
  const { book, leftOut } = readOf(bytes);
  const { grid, dispose } = await calculateWorkbook(gridOfBook(book));
  workbookOf(grid).setActiveSheet(shownFirst(book));
  const saved = writeBook(bookOfGrid(grid));
  dispose();
  return { bytes: saved, told: leftOut.map(keyOf) };
}
