import type { At } from './layout.js';
import type { Block } from './list.js';

const BETWEEN = '|';

/** What cells read together say, in a row of the example. */
const keyOf = (row: Block['examples'][number], columns: readonly string[]): string =>
  columns.map((key) => String(row[key] ?? '')).join(BETWEEN);

/**
 * How many figures of each row are still those of one row of the example: told by several columns together, so that
 * no figure is taken for the example’s by chance. A row with a source is the user’s.
 */
export function examplesIn({ name, examples, told }: Block, at: At): string {
  const column = (key: string) => at(`${name}.${key}`);
  const source = column('source');
  const same = told.map((columns) => {
    const read = columns.map(column).join(`&"${BETWEEN}"&`);
    const keys = [...new Set(examples.map((row) => keyOf(row, columns)))].map(
      (one) => `"${one.replaceAll('"', '""')}"`,
    );
    return `${columns.length}*ISNUMBER(MATCH(${read},{${keys.join(';')}},0))`;
  });
  return `=IF(ROW(${source})=MIN(ROW(${source})),"count",(LEN(${source})=0)*(${same.join('+')}))`;
}
