import { isNoAnswer } from '../core/evaluate.js';
import type { NoAnswer } from '../core/output.js';
import { costOf } from './cost.js';
import type { CostPlan } from './input.js';
import { type Key, middleOf, variedKeys } from './ranges.js';
import { runOf } from './run.js';

/** Figures that differ by less than this share of their scale differ by rounding only. */
const SAME = 1e-12;

export type End = 'low' | 'high';

/** What one quantity does to a figure; undefined at an end where there is no run. */
export interface Swing {
  readonly atLow: number | undefined;
  readonly atHigh: number | undefined;
  /** Span of the figures at low end, middle and high end; without bound where an end has no run. */
  readonly width: number;
}

export function swing(at: (end: End) => number | NoAnswer, middle: number): Swing {
  const [atLow, atHigh] = (['low', 'high'] as const).map((end) => {
    const figure = at(end);
    return isNoAnswer(figure) ? undefined : figure;
  });
  const width =
    atLow === undefined || atHigh === undefined
      ? Number.POSITIVE_INFINITY
      : Math.max(atLow, middle, atHigh) - Math.min(atLow, middle, atHigh);
  return { atLow, atHigh, width };
}

/** Those that do anything to a figure of this scale, widest first. */
export const widestFirst = <T extends Swing>(swings: readonly T[], scale: number): readonly T[] =>
  swings
    .filter(({ width }) => width > SAME * Math.abs(scale))
    .sort((one, other) => (one.width === other.width ? 0 : other.width - one.width));

/** The columns that a swing fills. */
export const swingColumns = ({ atLow, atHigh }: Swing) => ({
  atLow,
  atHigh,
  change: atLow === undefined || atHigh === undefined ? undefined : atHigh - atLow,
  remark: [
    ...(atLow === undefined ? ['No run at its low end.'] : []),
    ...(atHigh === undefined ? ['No run at its high end.'] : []),
  ].join(' '),
});

/** A plan with every label in the middle of its ends. */
export function middlePlan<Plan extends CostPlan>({ low, high }: Readonly<Record<End, Plan>>): Plan {
  const keys = variedKeys({ low, high }) as readonly (Key & keyof CostPlan)[];
  const middles = keys.map((key) => [key, middleOf(key, low[key] as number, high[key] as number)]);
  return { ...low, ...Object.fromEntries(middles) };
}

export const noMiddle = ({ none }: NoAnswer): NoAnswer => ({
  none: `With every label in the middle of its ends: ${none}`,
});

export interface Swings {
  /** Widest first. */
  readonly swings: readonly (Swing & { readonly key: Key })[];
  /** Cost per m³ of beer with every label in the middle. */
  readonly middle: number;
  /** How many labels with two ends do nothing. */
  readonly idle: number;
}

function costAt(plan: CostPlan): number | NoAnswer {
  const run = runOf(plan);
  return isNoAnswer(run) ? run : costOf(plan, run);
}

/** Moves one label at a time to its ends, all others in the middle of theirs. */
export function swingsOf(ends: Readonly<Record<End, CostPlan>>): Swings | NoAnswer {
  const plan = middlePlan(ends);
  const middle = costAt(plan);
  if (isNoAnswer(middle)) return noMiddle(middle);
  const keys = variedKeys(ends) as readonly (Key & keyof CostPlan)[];
  const all = keys.map((key) => ({ key, ...swing((end) => costAt({ ...plan, [key]: ends[end][key] }), middle) }));
  const swings = widestFirst(all, middle);
  return { swings, middle, idle: all.length - swings.length };
}
