import type { FWorksheet } from '../engine/facade.js';
import { SHEET_VIEWPORT_KEY } from '../engine/render.js';

/** Rows and columns that are shown before the one that is gone to, so that its labels are seen too. */
const CONTEXT = { rows: 3, columns: 2 };

/** The first line to show so that `at` is in view, given which lines are; undefined where it is in view as it is. */
export function firstShown(at: number, frozen: number, from: number, to: number, context: number): number | undefined {
  // What is frozen is always in view; the last line may be cut.
  if (at < frozen || (at >= from && at < Math.max(to, from + 1))) return undefined;
  return Math.max(frozen, at - context);
}

/** Brings a cell into view, beside what is frozen and never under it. What is in view already stays where it is. */
export function reveal(sheet: FWorksheet, row: number, column: number): void {
  const { xSplit, ySplit } = sheet.getFreeze();
  const seen = sheet.getVisibleRangesOfAllViewports()?.get(SHEET_VIEWPORT_KEY.VIEW_MAIN);
  if (!seen) return;
  const [frozenRows, frozenColumns] = [Math.max(0, ySplit), Math.max(0, xSplit)];
  const top = firstShown(row, frozenRows, seen.startRow, seen.endRow, CONTEXT.rows);
  const left = firstShown(column, frozenColumns, seen.startColumn, seen.endColumn, CONTEXT.columns);
  if (top === undefined && left === undefined) return;
  sheet.scrollToCell(top ?? seen.startRow, left ?? seen.startColumn);
}
