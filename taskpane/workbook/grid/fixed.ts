import type { ICellData, Nullable } from '../engine/core.js';
import type { Shape } from '../xlsx/arrayShape.js';
import type { BookCell } from '../xlsx/book.js';

interface Fixed extends Shape {
  readonly formula: string;
}

/** How far an array formula of the older kind reaches travels with its cell. */
export const withFixed = (cell: ICellData, { formula, fixed }: BookCell): ICellData =>
  fixed && formula !== undefined
    ? { ...cell, custom: { ...cell.custom, fixed: { ...fixed, formula } satisfies Fixed } }
    : cell;

/** How far the formula in a cell reaches, as long as it is the one from the file: any other fills what its answer has. */
export function fixedOf(cell: Nullable<ICellData>, formula: string | undefined): Pick<BookCell, 'fixed'> {
  const fixed = cell?.custom?.fixed as Fixed | undefined;
  return fixed && fixed.formula === formula ? { fixed: { rows: fixed.rows, columns: fixed.columns } } : {};
}
