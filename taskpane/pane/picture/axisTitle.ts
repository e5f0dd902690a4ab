import { labelled } from '../../../src/core/wording.js';
import { unitBeside } from '../formats.js';
import type { Column } from './picture.js';

/** "Pressure drop (bar)"; a price says what it is per, a fraction stands as a percentage. */
export function axisTitle({ label, unit }: Column): string {
  if (unit.startsWith('money')) return labelled(label, unit);
  const beside = unitBeside(unit);
  return beside === '' ? label : `${label} (${beside})`;
}
