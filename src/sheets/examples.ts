import { isChoice } from './declared.js';
import type { At } from './layout.js';
import type { Block } from './list.js';
import { quotedText } from './verdict.js';

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

/** Whether what stands in these columns is that of one row of the example; `read` gives the places to look at. */
export function isOfExample(
  { given, examples }: Pick<Block, 'given' | 'examples'>,
  columns: readonly string[],
  read: (key: string) => string,
): string {
  const isFigure = (key: string): boolean => {
    const declared = given.find((one) => one.key === key)?.declared;
    return declared !== undefined && !isChoice(declared);
  };
  const found = columns
    .map((key) => (isFigure(key) ? `ROUND(${FINEST}*${read(key)},0)` : read(key)))
    .join(`&"${BETWEEN}"&`);
  const keys = [...new Set(examples.map((row) => keyOf(row, columns, isFigure)))].map(quotedText);
  return `ISNUMBER(MATCH(${found},{${keys.join(';')}},0))`;
}

/**
 * How many figures of each row are still those of one row of the example: told by several columns together, so that
 * no figure is taken for the example’s by chance. A row with a source is the user’s.
 */
export function examplesIn(block: Block, at: At): string {
  const column = (key: string) => at(`${block.name}.${key}`);
  const source = column('source');
  const same = block.told.map((columns) => `${columns.length}*${isOfExample(block, columns, column)}`);
  return `=IF(ROW(${source})=MIN(ROW(${source})),"count",(LEN(${source})=0)*(${same.join('+')}))`;
}
