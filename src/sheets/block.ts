import { inputCell, shownUnit, spilled, text, unitOf } from './cells.js';
import { examplesIn } from './examples.js';
import type { At, Line, Mark } from './layout.js';
import type { Block, Given } from './list.js';
import { stateOf } from './listState.js';
import { SOURCE_HELP, SOURCE_TITLE } from './provenance.js';
import type { SheetCell } from './sheet.js';
import { quotedText, type Step, steps } from './verdict.js';

/** Where a list’s own columns stand. */
const STATE = 0;

/** What ends the name of a column’s place from its title on, one row higher than the place itself. */
export const ABOVE = '.above';

export const placesOf =
  ({ name }: Pick<Block, 'name'>, at: At) =>
  (key: string): string =>
    at(`${name}.${key}`);

/** Whether what stands in a row stands in a row above it, too. */
export const standsAbove = (range: string): string => `MATCH(${range},${range},0)<ROW(${range})-MIN(ROW(${range}))+1`;

/** Whether a row counts: 1 where all that it needs is there and none of it refused, else 0. */
const countedOf = (block: Block, at: At): string => {
  const column = placesOf(block, at);
  const names = column((block.given[0] as Given).key);
  return `=IF(ROW(${names})=MIN(ROW(${names})),"1: yes",--ISNUMBER(MATCH(LEFT(${column('state')},7),{"complet","unusual"},0)))`;
};

/** A column of the list with nothing where its row does not count. */
export const ofCounted = (block: Pick<Block, 'name'>, at: At, formula: string): string =>
  `IF(${placesOf(block, at)('counted')}=1,${formula},"")`;

/** The formula of a calculated column: its unit above, and an answer in each row that counts. */
function calculatedOf(block: Block, at: At, unit: string, formula: string): string {
  const column = placesOf(block, at);
  if (!block.isLong)
    return `=IF(ISTEXT(${column('counted')}),${quotedText(unit)},IF(${column('counted')},${formula},""))`;
  const states = column('state');
  return `=IF(ROW(${states})=MIN(ROW(${states})),${quotedText(unit)},${formula})`;
}

const keysOf = ({ given, calculated, isLong }: Block): readonly string[] => [
  'state',
  ...given.map(({ key }) => key),
  'source',
  ...calculated.map(({ key }) => key),
  ...(isLong ? [] : ['counted', 'examples']),
];

/** The rows that are filled in, under the names of their columns. */
export const rowsOf = (block: Block): Readonly<Record<string, Mark>> =>
  Object.fromEntries(
    keysOf(block).flatMap((key, column): [string, Mark][] =>
      [...block.given, ...block.calculated].some((one) => one.key === key) ? [[key, { column, rows: block.room }]] : [],
    ),
  );

/** The end of the name of a column’s first rows. */
export const UPPER = '.upper';

/** Rows from the units of a list on, in which its example stands, wherever rows are put in: each column by its name. */
export const upperRowsOf = (block: Block, rows: number): Readonly<Record<string, Mark>> =>
  Object.fromEntries(
    keysOf(block).map((key, column): [string, Mark] => [`${block.name}.${key}${UPPER}`, { column, rows }]),
  );

const marksOf = (block: Block, ending: string): Readonly<Record<string, Mark>> =>
  Object.fromEntries(
    keysOf(block).map((key, index): [string, Mark] => [
      `${block.name}.${key}${ending}`,
      { column: index, rows: block.room + 2 },
    ]),
  );

function anchorCells(block: Block, at: At): readonly SheetCell[] {
  const column = placesOf(block, at);
  return [
    { formula: stateOf(block, at), style: 'unit' },
    ...block.given.map(({ declared }) => text(declared ? shownUnit(unitOf(declared)) : '', 'unit')).map(right),
    text('', 'unit'),
    ...block.calculated.map(({ unit, head, formula }) =>
      right({
        formula: calculatedOf(block, at, head ?? shownUnit(unit), formula(column, at)),
        style: 'unit',
      } as const),
    ),
    ...(block.isLong ? [] : [countedOf(block, at), examplesIn(block, at)]).map((formula) =>
      right({ formula, style: 'unit' } as const),
    ),
    ...(block.beside ? [EMPTY, ...block.beside.cells(at)] : []),
  ];
}

const EMPTY: SheetCell = { text: '' };
/** A row that does not count shows nothing, so that an empty one is empty. */
const COUNT: SheetCell = { style: 'note', format: '0;;' };

const right = (cell: SheetCell, index = 1): SheetCell => (index > 0 ? { ...cell, align: 'right' } : cell);

const rowCells = ({ given, calculated, examples, beside, isLong }: Block, row: number): readonly SheetCell[] => [
  { style: 'note' },
  ...given.map(({ key, declared, digits, help }): SheetCell => {
    const figure = examples[row]?.[key];
    if (declared) return inputCell(declared, figure, digits);
    return { ...(figure === undefined ? {} : { text: String(figure) }), style: 'input', note: help ?? '' };
  }),
  { style: 'input', note: SOURCE_HELP },
  ...calculated.map(({ unit, digits }) => spilled(unit, digits)),
  ...(isLong ? [] : [COUNT, COUNT]),
  ...(beside ? [EMPTY, ...beside.rows] : []),
];

const titlesOf = ({ given, calculated, isLong }: Block): readonly SheetCell[] =>
  [
    'State',
    ...given.map(({ label }) => label),
    SOURCE_TITLE,
    ...calculated.map(({ label }) => label),
    ...(isLong ? [] : ['Counted', 'Figures of the example']),
  ].map((words, index) => ({ ...text(words, 'heading'), ...(index > 1 ? { align: 'right' as const } : {}) }));

/** Marks the cell that the state of its row names. */
const judgedOf = ({ room, given, calculated }: Block) => ({
  named: {
    column: 1,
    rows: room + 1,
    columns: given.length,
    by: STATE,
    examples: given.length + calculated.length + 3,
  },
});

export function blockLines(block: Block): readonly Line[] {
  const width = block.given.length + 1;
  return [
    { marks: marksOf(block, ABOVE), cells: () => titlesOf(block) },
    {
      marks: { ...marksOf(block, ''), ...block.beside?.marks(keysOf(block).length + 1) },
      cells: (at) => anchorCells(block, at),
    },
    ...Array.from(
      { length: block.room },
      (_, row): Line => ({
        ...(row === 0 && !block.isLong ? judgedOf(block) : {}),
        cells: () => rowCells(block, row),
      }),
    ),
    { cells: () => [{ style: 'note' }, ...Array.from({ length: width }, (): SheetCell => ({ style: 'note' }))] },
  ];
}

/** How many rows are sound, and how many are not. */
export const countOf = (block: Block, at: At): string => `SUM(${placesOf(block, at)('counted')})`;
export const refusedOf = (block: Block, at: At): string => `COUNTIF(${placesOf(block, at)('state')},"refused*")`;

const NOTHING_BELOW = 1;

/** What is said of a cell so many rows below a list’s row of units. */
export const namedIn = (range: string, row: number, words: string): string =>
  `"refused: "&ADDRESS(MIN(ROW(${range}))+${row},MIN(COLUMN(${range})),4)&${quotedText(` ${words}`)}`;

/** That a list must have rows. */
export const mustHaveRows = (block: Block, at: At): Step => {
  const names = placesOf(block, at)((block.given[0] as Given).key);
  const words = namedIn(names, NOTHING_BELOW, `is empty: no ${block.what} is complete.`);
  return (rest) => `IF(${countOf(block, at)}=0,${words},${rest})`;
};

/** The first row that is not sound, what else is refused, or what is odd: as a judgement. */
export function judgementOf(block: Block, at: At, further: readonly Step[] = [mustHaveRows(block, at)]): string {
  const state = placesOf(block, at)('state');
  const firstOf = (look: string, rest: string) => `IFERROR(INDEX(${state},MATCH("${look}*",${state},0)),${rest})`;
  const blocked = namedIn(state, 0, 'is blocked: empty the cells below it.');
  return `IF(ISERROR(INDEX(${state},1)),${blocked},${firstOf('refused', steps(further, firstOf('unusual', '"sound"')))})`;
}
