import type { Grid } from './boot.js';
import { contentOf } from './cells.js';
import { activeCell, shownAt, workbookOf } from './place.js';

interface Region {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

type Shown = (row: number, column: number) => ReturnType<typeof contentOf>;

/** Everything around a cell up to the next empty rows and columns. */
export function around(
  row: number,
  column: number,
  isEmpty: (row: number, column: number) => boolean,
  most: Region,
): Region {
  const region = { top: row, bottom: row, left: column, right: column };
  const blank = (top: number, bottom: number, left: number, right: number) => {
    if (top < most.top || bottom > most.bottom || left < most.left || right > most.right) return true;
    for (let r = top; r <= bottom; r += 1) for (let c = left; c <= right; c += 1) if (!isEmpty(r, c)) return false;
    return true;
  };
  for (;;) {
    const { top, bottom, left, right } = region;
    if (!blank(bottom + 1, bottom + 1, left, right)) region.bottom += 1;
    else if (!blank(top - 1, top - 1, left, right)) region.top -= 1;
    else if (!blank(top, bottom, right + 1, right + 1)) region.right += 1;
    else if (!blank(top, bottom, left - 1, left - 1)) region.left -= 1;
    else return region;
  }
}

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
