import { type Mark, placeOf } from './place.js';
import type { SheetCondition } from './sheet.js';
import { EXAMPLES } from './verdict.js';

/** Cells that are judged, and where the judgement of the first of them stands, counted from the same row. */
export interface Judged {
  readonly cells: Mark;
  readonly by: { readonly column: number; readonly down?: number };
}

/** Cells of a list, whose rows each say which of their cells is not sound, and how many are the example’s. */
export interface NamedInRow {
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
  readonly by: number;
  readonly examples: number;
}

interface Block {
  readonly top: number;
  readonly rows: number;
  readonly column: number;
  readonly columns: number;
  readonly by: { readonly row: number; readonly column: number };
}

const blockOf = (row: number, { cells: { column, rows = 1, columns = 1 }, by }: Judged): Block => ({
  ...{ top: row, rows, column, columns },
  by: { row: row + (by.down ?? 0), column: by.column },
});

/** Whether the second goes on where the first ends, with its judgement as far away. */
const follows = (one: Block, other: Block): boolean =>
  one.top + one.rows === other.top &&
  one.column === other.column &&
  one.columns === other.columns &&
  one.by.column === other.by.column &&
  one.by.row - one.top === other.by.row - other.top;

/** Blocks that follow each other as one, so that a sheet gets few conditions. */
function joined(blocks: readonly Block[]): readonly Block[] {
  const done: Block[] = [];
  for (const block of blocks) {
    const before = done.findIndex((one) => follows(one, block));
    const found = done[before];
    if (found) done[before] = { ...found, rows: found.rows + block.rows };
    else done.push(block);
  }
  return done;
}

const cellsOf = ({ rows, columns }: Pick<Block, 'rows' | 'columns'>): number => rows * columns;

/** Cells between judged ones that a condition may cover besides: nothing is said of them, so they are never coloured. */
const MORE = 1.4;

/** The rectangle around both, where their judgements stand as far away and few other cells lie between. */
function around(one: Block, other: Block): Block | undefined {
  if (one.by.row - one.top !== other.by.row - other.top) return undefined;
  if (one.by.column - one.column !== other.by.column - other.column) return undefined;
  const [top, column] = [Math.min(one.top, other.top), Math.min(one.column, other.column)];
  const rows = Math.max(one.top + one.rows, other.top + other.rows) - top;
  const columns = Math.max(one.column + one.columns, other.column + other.columns) - column;
  if (cellsOf({ rows, columns }) > MORE * (cellsOf(one) + cellsOf(other))) return undefined;
  const by = { row: one.by.row - one.top + top, column: one.by.column - one.column + column };
  return { top, rows, column, columns, by };
}

/** As few blocks as do, each with few cells of which nothing is said. */
function gathered(blocks: readonly Block[]): readonly Block[] {
  for (const [index, one] of blocks.entries())
    for (const other of blocks.slice(index + 1)) {
      const both = around(one, other);
      if (both) return gathered([...blocks.filter((block) => block !== one && block !== other), both]);
    }
  return blocks;
}

const LOOKS = ['refused', 'unusual'] as const;

const begins = (place: string, look: string) => `=LEFT(${place},${look.length})="${look}"`;

/**
 * A judgement begins with one of the words; spreadsheet programs read it like any other cell. That of an answer never
 * says that it is the example’s.
 */
export const conditionsOf = (
  judged: readonly (readonly [row: number, judged: Judged])[],
  of: 'inputs' | 'answers' = 'inputs',
): readonly SheetCondition[] =>
  gathered(joined(judged.map(([row, one]) => blockOf(row, one)))).flatMap((block) => {
    const by = placeOf(block.by.row, { column: block.by.column });
    const range = placeOf(block.top, block);
    const example = {
      range,
      formula: `=RIGHT(${by},${EXAMPLES.length})="${EXAMPLES}"`,
      look: 'example' as const,
    };
    return [
      ...LOOKS.map((look) => ({ range, formula: begins(by, look), look })),
      ...(of === 'inputs' ? [example] : []),
    ];
  });

export const conditionsOfList = (row: number, { by, examples, ...cells }: NamedInRow): readonly SheetCondition[] => {
  const range = placeOf(row, cells);
  const first = placeOf(row, { column: cells.column });
  const state = `$${placeOf(row, { column: by })}`;
  return [
    ...LOOKS.map((look) => ({
      range,
      formula: `=ISNUMBER(SEARCH("${look}: "&ADDRESS(ROW(${first}),COLUMN(${first}),4)&" ",${state}))`,
      look,
    })),
    { range, formula: `=N($${placeOf(row, { column: examples })})*LEN(${first})>0`, look: 'example' },
  ];
};
