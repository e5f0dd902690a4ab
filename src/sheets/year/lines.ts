import { columnsOf } from '../columns.js';
import { figureLines } from '../figures.js';
import { call } from '../formula.js';
import type { At, Line, Mark } from '../layout.js';
import type { SheetCell } from '../sheet.js';
import { BEERS } from './beers.js';

export const columns = columnsOf(['Now', 'Proposed']);
export const { computed } = figureLines(columns);

export const SIDES = ['now', 'proposed'] as const;
/** Before the beers stand what, two figures, unit and two judgements. */
const LEAD = columns.source;
const BEER_WIDTH = 16;

/** The column of a beer in the plans of a side. */
export const beerColumn = (side: number, beer: number): number => LEAD + side * BEERS.length + beer;
export const SOURCE = beerColumn(2, 0);

export const widths: readonly number[] = [
  42,
  ...[18, 18, 16, 20, 20],
  ...[24, 24],
  ...Array.from({ length: 2 * BEERS.length - 2 }, () => BEER_WIDTH),
  70,
];

export const beerName = (beer: number): string => `Beer ${beer + 1}`;
export const beerTitles: readonly string[] = SIDES.flatMap((side) =>
  BEERS.map((_, beer) => `${beerName(beer)} ${side}`),
);

const EMPTY: SheetCell = { text: '' };

/** A line with a cell for each beer, now and proposed, between its judgement and its source. */
export const withBeers = (
  line: Line,
  beers: (at: At) => readonly SheetCell[],
  marks: Readonly<Record<string, Mark>> = {},
): Line => ({
  marks: { ...line.marks, ...marks },
  cells: (at) => {
    const cells = line.cells(at);
    const lead = Array.from({ length: LEAD }, (_, column) => cells[column] ?? EMPTY);
    const source = cells[LEAD];
    const across = beers(at);
    const rest = Array.from({ length: SOURCE - LEAD - across.length }, () => EMPTY);
    return [...lead, ...across, ...rest, ...(source ? [source] : [])];
  },
});

/** The plan of one beer on one side, as its functions take it. */
export const planOf = (at: At, side: number, beer: number): string => at(`year.${side}.${beer}`);

export const ofBeer = (id: string, at: At, side: number, beer: number): string =>
  call(id, [at('year.labels'), planOf(at, side, beer)]);

/** The plans of a side at the beer that was chosen. */
export const chosen = (at: At, side: number): string => `INDEX(${at(`year.${side}`)},0,${at('chosenBeer')})`;
