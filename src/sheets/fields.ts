import type { Calculation } from '../core/calculation.js';
import { labelled } from '../core/wording.js';

/** The title of an axis that shows a field of an answer: its label and unit. */
export function axisTitleOf({ id, output }: Calculation, key: string): { readonly title: string } {
  const field = 'fields' in output ? output.fields[key] : undefined;
  if (!field || !('unit' in field)) throw new Error(`${id} answers with no figure ${key}.`);
  return { title: labelled(field.label, field.unit) };
}
