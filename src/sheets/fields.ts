import type { Calculation } from '../core/calculation.js';
import type { Unit } from '../core/units.js';
import { labelled } from '../core/wording.js';

/** “Pressure drop (bar)”; a price says what it is per. */
export const titleWithUnit = (label: string, unit: Unit): string =>
  unit === '' || unit.startsWith('money') ? labelled(label, unit) : `${label} (${unit})`;

/** The title of an axis that shows a field of an answer: its label and unit. */
export function axisTitleOf({ id, output }: Calculation, key: string): { readonly title: string } {
  const field = 'fields' in output ? output.fields[key] : undefined;
  if (!field || !('unit' in field)) throw new Error(`${id} answers with no figure ${key}.`);
  return { title: titleWithUnit(field.label, field.unit) };
}
