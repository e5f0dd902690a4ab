import { seeded } from '../numerics/triangular.js';
import { costOf } from './cost.js';
import { draw, drawsInto } from './draws.js';
import type { YearPlan } from './input.js';
import { runOf } from './run.js';

/** Savings that are a smaller share of the cost than this come from rounding: a tie. */
const TIE = 1e-12;

interface YearEnds {
  readonly low: YearPlan;
  readonly high: YearPlan;
}

export interface SampledSavings {
  /** Of the samples in which both plans have a run, ascending. */
  readonly savings: Float64Array;
  /** In how many of them the proposed plan is cheaper. */
  readonly saving: number;
  readonly withoutRun: number;
}

/** Yearly savings of so many pairs of plans, drawn between their ends. Same seed, same savings. */
export function sampleSavings(
  present: YearEnds,
  proposed: YearEnds,
  samples: number,
  seed: number,
  apart?: ReadonlySet<string>,
): SampledSavings {
  // Two records serve all samples: to make a plan anew for each would cost more than its run.
  const plans = { present: { ...present.low }, proposed: { ...proposed.low } };
  const draws = drawsInto(plans, { present, proposed }, apart);
  const generator = seeded(seed);
  const savings = new Float64Array(samples);
  let withRun = 0;
  let saving = 0;
  for (let sample = 0; sample < samples; sample++) {
    draw(draws, generator);
    const presentRun = runOf(plans.present);
    const proposedRun = runOf(plans.proposed);
    if ('none' in presentRun || 'none' in proposedRun) continue;
    const cost = costOf(plans.present, presentRun);
    const saved = cost - costOf(plans.proposed, proposedRun);
    if (saved > TIE * cost) saving++;
    savings[withRun++] = saved * plans.present.yearVolume;
  }
  return { savings: savings.subarray(0, withRun).sort(), saving, withoutRun: samples - withRun };
}
