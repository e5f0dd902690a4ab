import type { FWorksheet } from '../engine/facade.js';
import { LIMITS } from '../xlsx/limits.js';

interface Extent {
  readonly rows: number;
  readonly columns: number;
}

/** Whether a sheet can reach so far: as far as one that is opened from a file. */
export const canReach = ({ rows, columns }: Extent): boolean => rows <= LIMITS.rows && columns <= LIMITS.columns;

/** Lets a sheet grow until it reaches so far. */
export function growTo(sheet: FWorksheet, { rows, columns }: Extent): void {
  if (rows > sheet.getMaxRows()) sheet.setRowCount(rows);
  if (columns > sheet.getMaxColumns()) sheet.setColumnCount(columns);
}
