import { around, type Region } from '../../host/region.js';
import type { Grid } from './boot.js';
import { contentOf } from './cells.js';
import { activeCell, shownAt, spilledRanges, workbookOf } from './place.js';

type Shown = (row: number, column: number) => ReturnType<typeof contentOf>;

/** Whether the first row names the columns: texts throughout, over at least one number. */
export function hasTitles({ top, bottom, left, right }: Region, at: Shown): boolean {
  if (bottom === top) return false;
  const columns = Array.from({ length: right - left + 1 }, (_, index) => left + index);
  const isText = (column: number) => typeof (at(top, column) ?? '') === 'string';
  return columns.every(isText) && columns.some((column) => typeof at(top + 1, column) === 'number');
}

interface Filled {
  readonly startRow: number;
  readonly endRow: number;
  readonly startColumn: number;
  readonly endColumn: number;
}

/**
 * What somebody fills in of a list whose other columns are filled from a row of formulas above it: the cells beside the
 * given one, from below that row to the last that holds anything. Nothing where no formula fills down past the cell.
 */
export function filledInList(
  { row, column }: { readonly row: number; readonly column: number },
  { left, right, bottom }: Region,
  spilled: readonly Filled[],
  isEmpty: (row: number, column: number) => boolean,
): Region | undefined {
  const past = spilled.filter(({ startRow, endRow, startColumn, endColumn }) => {
    const beside = startColumn <= right && endColumn >= left;
    return beside && startRow < row && endRow >= row;
  });
  const isSpilled = (at: number) => past.some((one) => at >= one.startColumn && at <= one.endColumn);
  if (past.length === 0 || isSpilled(column)) return undefined;
  let [from, to] = [column, column];
  while (from > left && !isSpilled(from - 1)) from -= 1;
  while (to < right && !isSpilled(to + 1)) to += 1;
  const top = Math.max(...past.map(({ startRow }) => startRow)) + 1;
  const blank = (at: number) =>
    Array.from({ length: to - from + 1 }, (_, index) => from + index).every((one) => isEmpty(at, one));
  let last = Math.max(row, bottom);
  while (last > row && blank(last)) last -= 1;
  return { top, left: from, right: to, bottom: last };
}

interface Meant extends Region {
  readonly titles: boolean;
  readonly column: number;
  /** Where it is a list that formulas fill besides: what of it somebody fills in. */
  readonly list?: Region;
}

/** The table that is meant: the selected cells, or all around the one that is selected. */
export function meantRegion(grid: Grid): Meant {
  const sheet = workbookOf(grid).getActiveSheet();
  const at: Shown = (row, column) => contentOf(shownAt(grid, sheet, row, column).cell);
  const cell = activeCell(grid);
  const range = sheet.getActiveRange()?.getRange();
  const [lastRow, lastColumn] = [sheet.getLastRow(), sheet.getLastColumn()];
  const most = { top: 0, left: 0, bottom: lastRow, right: lastColumn };
  const several = range && (range.endRow > range.startRow || range.endColumn > range.startColumn);
  const region = several
    ? {
        top: range.startRow,
        left: range.startColumn,
        bottom: Math.min(range.endRow, lastRow),
        right: Math.min(range.endColumn, lastColumn),
      }
    : around(cell.getRow(), cell.getColumn(), (row, column) => at(row, column) === null, most);
  const place = { row: cell.getRow(), column: cell.getColumn() };
  const isEmpty = (row: number, column: number) => at(row, column) === null;
  const list = several ? undefined : filledInList(place, region, spilledRanges(grid, sheet), isEmpty);
  return { ...region, titles: hasTitles(region, at), column: place.column, ...(list ? { list } : {}) };
}
