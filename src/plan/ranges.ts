import type { PlanLabel, PlanValues } from '../core/input.js';
import { fromSI, type Unit } from '../core/units.js';
import { amount, labelled } from '../core/wording.js';
import { PLAN } from './table.js';

export type Key = keyof typeof PLAN;

/** A value as it stands in the sheet: two that differ must not read alike. */
export const asGiven = (value: number, unit: Unit): string => amount(Number(fromSI(value, unit).toPrecision(12)), unit);

export const labelOf = (key: Key): PlanLabel => PLAN[key];

/** A label as an answer names it. */
export const itemOf = (key: Key): string => labelled(PLAN[key].label, PLAN[key].unit);

/** Labels of which 0 says "none" or "as another": no end of a range. */
const ZERO_APART: readonly Key[] = [
  'precoatPrice',
  'runLimit',
  'septumRadius',
  'leastFlow',
  'leastFeed',
  'startFlow',
  'startViscosity',
  'startPrecoat',
];

/** Quantities that are known to a factor rather than to an amount. */
export const isLogarithmic = (key: Key): boolean => ['darcy', 'm/kg'].includes(labelOf(key).unit);

export interface Ends {
  readonly low: PlanValues;
  readonly high: PlanValues;
}

/** What the columns of both ends are called. */
export interface EndNames {
  readonly low: string;
  readonly high: string;
}

function refusalAt(key: Key, low: number | undefined, high: number | undefined, names: EndNames): string | undefined {
  const { label, unit } = labelOf(key);
  if (low === undefined || high === undefined) {
    if (low === high) return undefined;
    const [given, blank] = low === undefined ? [names.high, names.low] : [names.low, names.high];
    return `${label} is given in ${given} but not in ${blank}. Give both ends of it, or neither.`;
  }
  if (low > high) {
    return `${label}: ${names.low}, ${asGiven(low, unit)}, lies above ${names.high}, ${asGiven(high, unit)}.`;
  }
  if (low < high && low === 0 && ZERO_APART.includes(key)) {
    return `${label} is 0 or blank in ${names.low} but not in ${names.high}. Of this label 0 is a case of its own, not a low end: give both ends above 0, or 0 in both.`;
  }
  return undefined;
}

/** Why two columns are no ranges, by the first label at fault. */
export function rangesRefusal({ low, high }: Ends, names: EndNames): string | undefined {
  for (const key of Object.keys(PLAN) as Key[]) {
    const refusal = refusalAt(key, low[key], high[key], names);
    if (refusal !== undefined) return refusal;
  }
  return undefined;
}

/** The keys whose ends differ, in the order of the plan's table. */
export const variedKeys = ({ low, high }: Ends): readonly Key[] =>
  (Object.keys(PLAN) as Key[]).filter((key) => low[key] !== high[key]);

/** The middle of a range: on a log scale the geometric one. */
export function middleOf(key: Key, low: number, high: number): number {
  if (low === high) return low;
  return isLogarithmic(key) ? Math.sqrt(low) * Math.sqrt(high) : low + (high - low) / 2;
}
