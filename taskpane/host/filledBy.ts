import { cellReference } from './address.js';
import type { Selection } from './host.js';

interface Place {
  readonly row: number;
  readonly column: number;
}

/** What a selection tells of the formula at `origin` that fills its cell: its own, or one that spills into it. */
export function filledBy(
  sheet: string,
  cell: Place,
  origin: Place,
  formula: string,
): Pick<Selection, 'formula' | 'spilledFrom'> {
  if (origin.row === cell.row && origin.column === cell.column) return { formula };
  return { spilledFrom: { place: cellReference(sheet, origin.row, origin.column), formula } };
}
