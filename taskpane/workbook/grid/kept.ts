import type { CellContent } from '../../host/host.js';
import type { ICellData, Nullable } from '../engine/core.js';
import { readsOnly } from '../xlsx/names.js';
import type { Grid } from './boot.js';
import { contentOf, hasFormula } from './cells.js';
import { MOVES } from './moves.js';
import { workbookOf } from './place.js';

/** A formula of a file that the grid cannot calculate, in the file's words, and the value that it had there. */
interface Kept {
  readonly formula: string;
  readonly value: CellContent;
}

/** The formula travels with its cell, as long as the value in it is the one from the file. */
export const withKept = (cell: ICellData, formula: string | undefined): ICellData =>
  formula === undefined
    ? cell
    : { ...cell, custom: { ...cell.custom, kept: { formula, value: contentOf(cell) } satisfies Kept } };

/** The formula whose last value from the file stands in a cell; nothing where something else was entered. */
export function keptFormula(cell: Nullable<ICellData>): string | undefined {
  const kept = cell?.custom?.kept as Kept | undefined;
  return kept && !hasFormula(cell) && contentOf(cell) === kept.value ? kept.formula : undefined;
}

interface Marked {
  moved?: boolean;
}

/** Such formulas do not move along: once cells have moved, they could read others than they meant. */
export function markMoves(grid: Grid): void {
  workbookOf(grid).onCommandExecuted(({ id }) => {
    if (!MOVES.has(id)) return;
    const snapshot = workbookOf(grid).getWorkbook().getSnapshot();
    snapshot.custom = { ...snapshot.custom, moved: true };
  });
}

/** The formula as it may be written back into a file with these sheets. */
export function writableKept(cell: Nullable<ICellData>, sheets: readonly string[], custom: Nullable<Marked>) {
  const formula = custom?.moved ? undefined : keptFormula(cell);
  return formula !== undefined && readsOnly(formula, sheets) ? formula : undefined;
}
