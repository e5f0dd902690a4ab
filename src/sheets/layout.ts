import { text } from './cells.js';
import type { SheetCell, StarterSheet } from './sheet.js';

/** Gives the address of a named place, such as `B7` or `B7:B19`. */
export type At = (name: string) => string;

/** Where in its row a named place begins, and how far it reaches. */
export interface Mark {
  readonly column: number;
  readonly rows?: number;
  readonly columns?: number;
}

/** One row of a starter sheet before addresses are known. Formulas of other rows read its marks. */
export interface Line {
  /** A name with a point in it serves formulas only and is not defined in the workbook. */
  readonly marks?: Readonly<Record<string, Mark>>;
  cells(at: At): readonly SheetCell[];
}

export const line = (words: string, style: SheetCell['style']): Line => ({ cells: () => [text(words, style)] });
export const title = (words: string): Line => line(words, 'title');
export const heading = (words: string): Line => line(words, 'heading');
export const note = (words: string): Line => line(words, 'note');
export const caution = (words: string): Line => line(words, 'caution');
export const gap: Line = { cells: () => [] };

/** Titles of a wide table's columns. */
export const titles = (words: readonly string[]): Line => ({ cells: () => words.map((one) => text(one, 'heading')) });

/** A, B, …, Z, AA, … */
export function columnLetters(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : columnLetters(Math.floor(column / 26) - 1) + letter;
}

function addressOf(row: number, { column, rows = 1, columns = 1 }: Mark): string {
  const first = `${columnLetters(column)}${row + 1}`;
  return rows === 1 && columns === 1 ? first : `${first}:${columnLetters(column + columns - 1)}${row + rows}`;
}

const isDefined = (name: string): boolean => !name.includes('.');

/** Lays lines out into a sheet: each mark gets its address, and a defined name. */
export function layOut(sheet: Omit<StarterSheet, 'rows' | 'names'>, lines: readonly Line[]): StarterSheet {
  const addresses = new Map<string, string>();
  for (const [row, { marks = {} }] of lines.entries()) {
    for (const [name, mark] of Object.entries(marks)) {
      if (addresses.has(name)) throw new Error(`Two places of ${sheet.name} are named ${name}.`);
      addresses.set(name, addressOf(row, mark));
    }
  }
  const at: At = (name) => {
    const address = addresses.get(name);
    if (address === undefined) throw new Error(`No place of ${sheet.name} is named ${name}.`);
    return address;
  };
  const names = Object.fromEntries([...addresses].filter(([name]) => isDefined(name)));
  return { ...sheet, rows: lines.map(({ cells }) => cells(at)), names };
}
