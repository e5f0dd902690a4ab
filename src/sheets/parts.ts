import { areaOf } from './area.js';
import type { SheetCell, StarterSheet } from './sheet.js';

/** Rows that belong together, from 0; the last of them is the one before the next part. */
export interface Part {
  readonly from: number;
  readonly rows: number;
}

type Row = readonly SheetCell[];

/** Whether anything is seen of a cell. */
export const isSeen = ({ text, number, formula, style }: SheetCell): boolean =>
  Boolean(text) || number !== undefined || formula !== undefined || style === 'input';

const isEmpty = (row: Row | undefined): boolean => !row?.some(isSeen);
/** The heading of a part stands alone in its row. */
const isHeading = (row: Row | undefined): boolean =>
  row?.[0]?.style === 'heading' && isSeen(row[0]) && row.filter(isSeen).length === 1;

/** The parts of a sheet: what begins with a heading, or after an empty row. No chart stands in two of them. */
export function partsOf({ rows, charts = [] }: Pick<StarterSheet, 'rows' | 'charts'>): readonly Part[] {
  const drawn = charts.map(({ place }) => areaOf(place));
  const inChart = (at: number) => drawn.some(({ row, rows: many }) => at > row && at < row + many);
  const begins = (at: number): boolean => {
    if (at === 0) return true;
    if (isEmpty(rows[at]) || inChart(at)) return false;
    return isEmpty(rows[at - 1]) || (isHeading(rows[at]) && !isHeading(rows[at - 1]));
  };
  const starts = [...rows.keys()].filter(begins);
  return starts.map((from, index) => ({ from, rows: (starts[index + 1] ?? rows.length) - from }));
}
