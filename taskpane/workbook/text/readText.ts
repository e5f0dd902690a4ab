import type { IWorksheetData } from '../engine/core.js';
import type { Writing } from '../entry/writing.js';
import { LIMITS } from '../xlsx/limits.js';
import type { OpenWords } from '../xlsx/reading.js';
import { decode, type Encoding } from './decode.js';
import { countMarks, rowsOf, type Separator, separatorOf } from './rows.js';
import { textSheet } from './textSheet.js';
import { type ReadingChoices, type Table, understand } from './understand.js';

export interface TextChoices extends ReadingChoices {
  readonly encoding?: Encoding;
  readonly separator?: Separator;
}

/** What was understood of a text file, and the sheet that it becomes. */
export interface ReadText extends Omit<Table, 'figure'> {
  readonly encoding: Encoding;
  readonly separator: Separator;
  readonly rows: number;
  /** The first rows as they stand in the file, long texts cut. */
  readonly first: readonly (readonly string[])[];
  /** Whether texts were cut at the length that a cell can have. */
  readonly cut: boolean;
  readonly sheet: Partial<IWorksheetData>;
}

const SHOWN = 8;
const SHOWN_LETTERS = 40;
/** Cells that hold nothing cost time too. */
const MOST_MARKS = 4 * LIMITS.cells;

/** Reads a text file of rows and columns; or says why it cannot be opened. */
export function readText(
  bytes: Uint8Array,
  writing: Writing,
  words: OpenWords,
  choices: TextChoices,
): ReadText | { readonly refusal: string } {
  if (bytes.length === 0) return { refusal: words.empty };
  const decoded = decode(bytes, choices.encoding);
  if (!decoded) return { refusal: words.noText };
  const { text, encoding } = decoded;
  if (text.length > LIMITS.characters) return { refusal: words.characters(LIMITS.characters) };
  const separator = choices.separator ?? separatorOf(text);
  if (countMarks(text, separator, MOST_MARKS) > MOST_MARKS) return { refusal: words.cells(LIMITS.cells) };
  const rows = rowsOf(text, separator, LIMITS.rows + 1);
  if (rows.length === 0) return { refusal: words.empty };
  if (rows.length > LIMITS.rows || rows.some(({ length }) => length > LIMITS.columns))
    return { refusal: words.reach(LIMITS.rows, LIMITS.columns) };
  const cells = rows.reduce((sum, row) => sum + row.filter(Boolean).length, 0);
  if (cells > LIMITS.cells) return { refusal: words.cells(LIMITS.cells) };
  const { figure, ...table } = understand(rows, separator, writing, choices);
  return {
    ...table,
    encoding,
    separator,
    rows: rows.length,
    first: rows.slice(0, SHOWN).map((row) => row.map((cell) => cell.slice(0, SHOWN_LETTERS))),
    cut: rows.some((row) => row.some(({ length }) => length > LIMITS.text)),
    sheet: textSheet(rows, { ...table, figure }),
  };
}
