import { referenceOf } from '../../formula/references.js';
import { Unknown } from '../../formula/unknown.js';
import type { Cells } from '../../host/host.js';
import type { RangeReference, Reference } from '../../host/reference.js';
import type { FWorksheet } from '../engine/facade.js';
import type { Grid } from './boot.js';
import { contentOf } from './cells.js';
import { shownAt, workbookOf } from './place.js';

/** The values of a rectangle; whole rows and columns end where the sheet's content does. */
function readRange(grid: Grid, sheet: FWorksheet, { top, left, bottom, right }: RangeReference): Cells | undefined {
  const last = { row: bottom ?? sheet.getLastRow(), column: right ?? sheet.getLastColumn() };
  if (last.row >= sheet.getMaxRows() || last.column >= sheet.getMaxColumns()) return undefined;
  return Array.from({ length: Math.max(1, last.row - top + 1) }, (_, row) =>
    Array.from({ length: Math.max(1, last.column - left + 1) }, (__, column) =>
      contentOf(shownAt(grid, sheet, top + row, left + column).cell),
    ),
  );
}

function readOne(grid: Grid, reference: Reference): Cells | undefined {
  const workbook = workbookOf(grid);
  if (reference.kind === 'range') {
    const sheet = workbook.getSheetByName(reference.sheet);
    return sheet ? readRange(grid, sheet, reference) : undefined;
  }
  // The grid knows neither tables nor `A1#`.
  if (reference.kind !== 'name') return undefined;
  const text = workbook.getDefinedName(reference.name)?.getFormulaOrRefString();
  const meant = text === undefined ? undefined : referenceOf(text.replace(/^=/, ''), reference.sheet);
  return meant === undefined || meant instanceof Unknown || meant.kind !== 'range' ? undefined : readOne(grid, meant);
}

export const read = (grid: Grid, references: readonly Reference[]): readonly (Cells | undefined)[] =>
  references.map((reference) => readOne(grid, reference));
