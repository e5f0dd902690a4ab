import { within } from '../engine/within.js';
import type { Grid } from './boot.js';
import { contentOf } from './cells.js';
import { selectedRanges } from './format.js';
import { isErrorCell, shownAt, spilledCells, workbookOf } from './place.js';
import { watchSelection } from './selection.js';

/** What the selected cells come to. */
export interface Summary {
  /** Cells that hold anything. */
  readonly count: number;
  readonly numbers: number;
  readonly sum: number;
}

/** A cell that lies in two selected ranges counts once. */
function summaryOf(grid: Grid): Summary {
  const sheet = workbookOf(grid).getActiveSheet();
  const ranges = selectedRanges(grid).map((range) => range.getRange());
  const isSelected = (row: number, column: number) => ranges.some((range) => within(range, row, column));
  let [count, numbers, sum] = [0, 0, 0];
  const take = (cell: Parameters<typeof contentOf>[0]) => {
    const content = contentOf(cell);
    if (content === null || content === '') return;
    count += 1;
    if (typeof content !== 'number' || isErrorCell(cell)) return;
    numbers += 1;
    sum += content;
  };
  const [only, ...others] = ranges;
  if (only && others.length === 0 && only.startRow === only.endRow && only.startColumn === only.endColumn) {
    take(shownAt(grid, sheet, only.startRow, only.startColumn).cell);
    return { count, numbers, sum };
  }
  const own = sheet.getSheet().getCellMatrix();
  own.forValue((row, column, cell) => {
    if (isSelected(row, column)) take(cell);
  });
  for (const [row, column, cell] of spilledCells(grid, sheet))
    if (isSelected(row, column) && contentOf(own.getValue(row, column)) === null) take(cell);
  return { count, numbers, sum };
}

/** Calls the listener whenever the selected cells come to something else. */
export function watchSummary(grid: Grid, listener: (summary: Summary) => void): () => void {
  let last = '';
  return watchSelection(
    grid,
    () => {
      const summary = summaryOf(grid);
      const now = JSON.stringify(summary);
      if (now === last) return;
      last = now;
      listener(summary);
    },
    { always: true },
  );
}
