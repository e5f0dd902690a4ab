import Papa from 'papaparse';

/** In this order they are looked for: a comma may be a decimal mark beside any of the others. */
export const SEPARATORS = ['\t', ';', '|', ','] as const;
export type Separator = (typeof SEPARATORS)[number];

/** Letters and rows that show which separator a file has. */
const SAMPLE = 64 * 1024;
const SAMPLE_ROWS = 100;
/** So many rows of one width are a table. */
const MOST_OF_THEM = 0.8;
/** A first line that names the separator, as some programs write it. */
const NAMED = /^sep=([\t;|,])\r?\n/i;

const parsed = (text: string, delimiter: string, preview: number): string[][] =>
  Papa.parse<string[]>(text, { delimiter, preview }).data;

/** Which share of the rows that are not blank has the width that most of them have, where that is more than one. */
function evenness(rows: readonly (readonly string[])[]): number {
  const filled = rows.filter((row) => row.length > 1 || row[0] !== '');
  const widths = new Map<number, number>();
  for (const { length } of filled) widths.set(length, (widths.get(length) ?? 0) + 1);
  widths.delete(1);
  return Math.max(0, ...widths.values()) / Math.max(1, filled.length);
}

/** The separator that divides the text into rows of one width; a tabulator where none does. */
export function separatorOf(text: string): Separator {
  const named = NAMED.exec(text)?.[1] as Separator | undefined;
  if (named) return named;
  const sample = text.slice(0, SAMPLE);
  const even = SEPARATORS.map((one) => [one, evenness(parsed(sample, one, SAMPLE_ROWS))] as const);
  const found = even.find(([, share]) => share >= MOST_OF_THEM);
  if (found) return found[0];
  const best = even.reduce((one, other) => (other[1] > one[1] ? other : one));
  return best[1] > 0 ? best[0] : '\t';
}

/** How many separators and ends of lines a text has; not more than `most` are counted. */
export function countMarks(text: string, separator: Separator, most: number): number {
  let count = 0;
  for (const mark of [separator, '\n', '\r'])
    for (let at = text.indexOf(mark); at !== -1 && count <= most; at = text.indexOf(mark, at + 1)) count += 1;
  return count;
}

/** The cells of each row, quotes taken off; at most `most` rows, blank ones at the end left out. */
export function rowsOf(text: string, separator: Separator, most: number): string[][] {
  const rows = parsed(text.replace(NAMED, ''), separator, most);
  while (rows.at(-1)?.every((cell) => cell.trim() === '')) rows.pop();
  return rows;
}
