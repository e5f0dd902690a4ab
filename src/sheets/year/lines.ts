import { text } from '../cells.js';
import { columnsOf } from '../columns.js';
import { figureLines } from '../figures.js';
import { call } from '../formula.js';
import { type At, type Line, type Mark, UNIT } from '../layout.js';
import type { SheetCell } from '../sheet.js';
import { BEERS } from './beers.js';

export const columns = columnsOf(['Now', 'Proposed']);
export const { computed } = figureLines(columns);

export const SIDES = ['now', 'proposed'] as const;
/** Before the beers stand what, two figures, unit and two judgements. */
const LEAD = columns.source;

/** The column of a beer; what is proposed for it stands below what is now, so that a page is no wider. */
export const beerColumn = (beer: number): number => LEAD + beer;
export const SOURCE = beerColumn(BEERS.length);

/** Some of these columns hold longer titles in the beer list. */
const BEER_WIDTHS: readonly number[] = [13, 16, 13, 13, 13, 13, 14, 17, 13, 13];

export const widths: readonly number[] = [40, 14, 17, 13, 18, 16, ...BEER_WIDTHS, 48];

export const beerName = (beer: number): string => `Beer ${beer + 1}`;

/** Both figures of all beers, and each beer’s. */
const isFigure = (column: number): boolean =>
  (column > 0 && column <= SIDES.length) || (column >= LEAD && column < SOURCE);

/** Over the whole sheet, and on every printed page; the beer list, the totals and the spread have titles of their own. */
const LEAD_TITLES = ['Quantity', 'Now', 'Proposed', UNIT, 'Judged now / saved', 'Judged proposed'];

export const headLine: Line = {
  cells: () =>
    [...LEAD_TITLES, ...BEERS.map((_, beer) => beerName(beer)), 'Where the figure comes from'].map((words, column) => ({
      ...text(words, 'heading'),
      ...(isFigure(column) ? { align: 'right' as const } : {}),
      ...(words === UNIT ? { align: 'indented' as const } : {}),
    })),
};

const EMPTY: SheetCell = { text: '' };

/** A line with a cell for each beer between its judgements and its source. */
export const withBeers = (
  line: Line,
  beers: (at: At) => readonly SheetCell[],
  marks: Readonly<Record<string, Mark>> = {},
): Line => ({
  ...line,
  marks: { ...line.marks, ...marks },
  cells: (at) => {
    const cells = line.cells(at);
    const lead = Array.from({ length: LEAD }, (_, column) => cells[column] ?? EMPTY);
    const source = cells[LEAD];
    return [...lead, ...beers(at), ...(source ? [source] : [])];
  },
});

/** A line of all beers together, with its source under the same title as the others. */
export const withoutBeers = (line: Line): Line => withBeers(line, () => BEERS.map(() => EMPTY));

/** The plan of one beer on one side, as its functions take it. */
export const planOf = (at: At, side: number, beer: number): string => at(`year.${side}.${beer}`);

export const ofBeer = (id: string, at: At, side: number, beer: number): string =>
  call(id, [at('year.labels'), planOf(at, side, beer)]);

/** The plans of a side at the beer that was chosen. */
export const chosen = (at: At, side: number): string => `INDEX(${at(`year.${side}`)},0,${at('chosenBeer')})`;
