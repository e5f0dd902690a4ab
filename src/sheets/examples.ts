import { isChoice } from './declared.js';
import type { At } from './layout.js';
import type { Block } from './list.js';

const BETWEEN = '|';

/** Figures of the example have no more places than this many; a whole number is written alike in every country. */
const FINEST = 1e6;

/** What cells read together say, in a row of the example. */
const keyOf = (
  row: Block['examples'][number],
  columns: readonly string[],
  isFigure: (key: string) => boolean,
): string =>
  columns.map((key) => (isFigure(key) ? Math.round(Number(row[key] ?? 0) * FINEST) : (row[key] ?? ''))).join(BETWEEN);

/**
 * How many figures of each row are still those of one row of the example: told by several columns together, so that
 * no figure is taken for the example’s by chance. A row with a source is the user’s.
 */
export function examplesIn({ name, given, examples, told }: Block, at: At): string {
  const isFigure = (key: string): boolean => {
    const declared = given.find((one) => one.key === key)?.declared;
    return declared !== undefined && !isChoice(declared);
  };
  const column = (key: string) => at(`${name}.${key}`);
  const source = column('source');
  const same = told.map((columns) => {
    const read = columns
      .map((key) => (isFigure(key) ? `ROUND(${FINEST}*${column(key)},0)` : column(key)))
      .join(`&"${BETWEEN}"&`);
    const keys = [...new Set(examples.map((row) => keyOf(row, columns, isFigure)))].map(
      (one) => `"${one.replaceAll('"', '""')}"`,
    );
    return `${columns.length}*ISNUMBER(MATCH(${read},{${keys.join(';')}},0))`;
  });
  return `=IF(ROW(${source})=MIN(ROW(${source})),"count",(LEN(${source})=0)*(${same.join('+')}))`;
}
