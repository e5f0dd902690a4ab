import { referenceOf } from '../../formula/references.js';
import { Unknown } from '../../formula/unknown.js';
import type { RangeReference, Reference } from '../../host/reference.js';
import { Refusal } from '../../host/refusal.js';
import type { Grid } from './boot.js';
import { workbookOf } from './place.js';
import { reveal } from './reveal.js';

/** The rectangle behind a reference; a name leads to it. The grid knows neither tables nor `A1#`. */
function rectangle(grid: Grid, reference: Reference): RangeReference | undefined {
  if (reference.kind === 'range') return reference;
  if (reference.kind !== 'name') return undefined;
  const text = workbookOf(grid).getDefinedName(reference.name)?.getFormulaOrRefString();
  const meant = text === undefined ? undefined : referenceOf(text.replace(/^=/, ''), reference.sheet);
  return meant === undefined || meant instanceof Unknown || meant.kind !== 'range' ? undefined : meant;
}

/** Shows the sheet of a place, selects it and brings it into view. */
export function goTo(grid: Grid, reference: Reference): void {
  const workbook = workbookOf(grid);
  const place = rectangle(grid, reference);
  const sheet = place && workbook.getSheetByName(place.sheet);
  if (!place || !sheet) throw new Refusal(({ gone }) => gone);
  workbook.setActiveSheet(sheet);
  const { top, left } = place;
  const last = { row: place.bottom ?? sheet.getLastRow(), column: place.right ?? sheet.getLastColumn() };
  sheet.getRange(top, left, Math.max(1, last.row - top + 1), Math.max(1, last.column - left + 1)).activate();
  reveal(sheet, top, left);
}
