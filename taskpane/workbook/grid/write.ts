import type { Block, BlockCell } from '../../host/host.js';
import { NotEmpty, Refusal } from '../../host/refusal.js';
import type { ICellData } from '../engine/core.js';
import type { Grid } from './boot.js';
import { cellData, hasFormula } from './cells.js';
import { asOneStep } from './oneStep.js';
import { activeCell, address, shownAt, workbookOf } from './place.js';
import { canReach, growTo } from './room.js';
import { pixelsOf } from './workbookData.js';

/** Whatever stood there before is written over, also by a place that holds nothing. */
function engineCell(cell: BlockCell | undefined, at: (row: number, column: number) => string): ICellData {
  const { formula, ...rest } = cell ?? {};
  return { v: null, f: null, si: null, p: null, ...cellData(formula ? { ...rest, formula: formula(at) } : rest) };
}

/** The first cell of a rectangle that shows something. */
function occupied(grid: Grid, row: number, column: number, rows: number, columns: number): string | undefined {
  const sheet = workbookOf(grid).getActiveSheet();
  for (let r = row; r < row + rows; r += 1) {
    for (let c = column; c < column + columns; c += 1) {
      const { cell } = shownAt(grid, sheet, r, c);
      if (hasFormula(cell) || cell?.p || (cell?.v !== undefined && cell.v !== null && cell.v !== ''))
        return address(r, c);
    }
  }
  return undefined;
}

/** Wide enough that a label or a unit can be read; columns are never made narrower. */
function widen(grid: Grid, column: number, cells: readonly (BlockCell | undefined)[]) {
  const sheet = workbookOf(grid).getActiveSheet();
  const longest = Math.max(
    ...cells.map((cell) =>
      cell?.style === 'note' || cell?.style === 'title' ? 0 : (cell?.text?.length ?? cell?.room ?? 0),
    ),
  );
  const width = Math.min(320, pixelsOf(longest));
  if (width > sheet.getColumnWidth(column)) sheet.setColumnWidth(column, width);
}

export function writeBlock(grid: Grid, { rows }: Block, overwrite: boolean): { address: string } {
  const sheet = workbookOf(grid).getActiveSheet();
  const cell = activeCell(grid);
  const [row, column] = [cell.getRow(), cell.getColumn()];
  const columns = Math.max(1, ...rows.map((cells) => cells.length));
  const where = address(row, column, row + rows.length - 1, column + columns - 1);
  const extent = { rows: row + rows.length, columns: column + columns };
  if (!canReach(extent)) {
    throw new Refusal((words) => words.noRoom(String(rows.length), String(columns), address(row, column)));
  }
  const taken = overwrite ? undefined : occupied(grid, row, column, rows.length, columns);
  if (taken) throw new NotEmpty(where, taken);
  const at = (r: number, c: number) => address(row + r, column + c);
  const cells = rows.map((line) => Array.from({ length: columns }, (_, c) => engineCell(line[c], at)));
  asOneStep(grid, () => {
    growTo(sheet, extent);
    sheet.getRange(row, column, rows.length, columns).setValues(cells);
    for (let c = 0; c < columns; c += 1)
      widen(
        grid,
        column + c,
        rows.map((line) => line[c]),
      );
  });
  return { address: where };
}
