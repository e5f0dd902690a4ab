import { isNoAnswer } from '../core/evaluate.js';
import type { NoAnswer } from '../core/output.js';
import { costOf } from './cost.js';
import type { CostPlan } from './input.js';
import { type Key, middleOf, variedKeys } from './ranges.js';
import { runOf } from './run.js';

/** Costs that differ by less than this share of themselves differ by rounding only. */
const SAME = 1e-12;

/** What one label does to the cost per m³ of beer; undefined at an end where there is no run. */
export interface Swing {
  readonly key: Key;
  readonly atLow: number | undefined;
  readonly atHigh: number | undefined;
  /** Span of the costs at low end, middle and high end; without bound where an end has no run. */
  readonly width: number;
}

export interface Swings {
  /** Widest first. */
  readonly swings: readonly Swing[];
  /** Cost with every label in the middle. */
  readonly middle: number;
  /** How many labels with two ends do nothing. */
  readonly idle: number;
}

function costAt(plan: CostPlan): number | undefined {
  const run = runOf(plan);
  return isNoAnswer(run) ? undefined : costOf(plan, run);
}

const widthOf = (costs: readonly (number | undefined)[]): number =>
  costs.includes(undefined)
    ? Number.POSITIVE_INFINITY
    : Math.max(...(costs as number[])) - Math.min(...(costs as number[]));

/** Moves one label at a time to its ends, all others in the middle of theirs. */
export function swingsOf({ low, high }: { readonly low: CostPlan; readonly high: CostPlan }): Swings | NoAnswer {
  const varied = variedKeys({ low, high }) as readonly (Key & keyof CostPlan)[];
  const middles = varied.map((key) => [key, middleOf(key, low[key] as number, high[key] as number)]);
  const plan: CostPlan = { ...low, ...Object.fromEntries(middles) };
  const run = runOf(plan);
  if (isNoAnswer(run)) return { none: `With every label in the middle of its ends: ${run.none}` };
  const middle = costOf(plan, run);
  const all = varied.map((key): Swing => {
    const atLow = costAt({ ...plan, [key]: low[key] });
    const atHigh = costAt({ ...plan, [key]: high[key] });
    return { key, atLow, atHigh, width: widthOf([atLow, middle, atHigh]) };
  });
  const swings = all.filter(({ width }) => width > SAME * Math.abs(middle));
  return {
    swings: swings.sort((one, other) => (one.width === other.width ? 0 : other.width - one.width)),
    middle,
    idle: all.length - swings.length,
  };
}
