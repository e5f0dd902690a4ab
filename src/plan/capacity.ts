import { isNoAnswer } from '../core/evaluate.js';
import type { PlanRefusal, PlanValues } from '../core/input.js';
import { toSI } from '../core/units.js';
import { figure } from '../core/wording.js';
import type { YearPlan } from './input.js';
import { labelOf } from './ranges.js';
import { type Run, runOf, timeFor } from './run.js';
import { PLAN } from './table.js';

/** A year that is no leap year, s. */
export const YEAR = toSI(365, 'd');

/** Filtering time of a year’s beer, s. */
export const filteringOf = (plan: YearPlan, run: Run): number =>
  (plan.yearVolume / run.volume) * timeFor(run, run.volume);

/** Time that a year’s beer takes of one filter, filtering and turnaround, s. */
export const busyTime = (plan: YearPlan, run: Run): number =>
  filteringOf(plan, run) + plan.turnaround * (plan.yearVolume / run.volume);

/** Why a year does not fit on one filter; nothing where it does, or where the plan is not whole. */
export function yearRefusalOf(given: PlanValues): PlanRefusal | undefined {
  const plan: Record<string, number | undefined> = {};
  for (const key of Object.keys(PLAN) as (keyof typeof PLAN)[]) {
    const { preset, unit, optional } = labelOf(key);
    const value = given[key] ?? (preset === undefined ? undefined : toSI(preset, unit));
    if (value === undefined && !optional) return undefined;
    plan[key] = value;
  }
  const run = runOf(plan as unknown as YearPlan);
  if (isNoAnswer(run)) return undefined;
  const hours = busyTime(plan as unknown as YearPlan, run);
  if (!(hours > YEAR)) return undefined;
  return {
    keys: ['yearVolume'],
    sentence: `Year volume takes ${figure(hours, 'h')} of filtering and turnaround, but one filter has ${figure(YEAR, 'h')} in a year. Give each filter its share.`,
  };
}
