import { around, type Region } from '../../host/region.js';
import type { Grid } from './boot.js';
import { contentOf } from './cells.js';
import { activeCell, shownAt, workbookOf } from './place.js';

type Shown = (row: number, column: number) => ReturnType<typeof contentOf>;

/** Whether the first row names the columns: texts throughout, over at least one number. */
export function hasTitles({ top, bottom, left, right }: Region, at: Shown): boolean {
  if (bottom === top) return false;
  const columns = Array.from({ length: right - left + 1 }, (_, index) => left + index);
  const isText = (column: number) => typeof (at(top, column) ?? '') === 'string';
  return columns.every(isText) && columns.some((column) => typeof at(top + 1, column) === 'number');
}

/** The table that is meant: the selected cells, or all around the one that is selected. */
export function meantRegion(grid: Grid): Region & { readonly titles: boolean; readonly column: number } {
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
  return { ...region, titles: hasTitles(region, at), column: cell.getColumn() };
}
