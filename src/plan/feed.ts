import { hindrance } from '../cake/parts.js';
import { loadGrowth } from '../cake/pressureDrop.js';
import { isNoAnswer } from '../core/evaluate.js';
import type { NoAnswer } from '../core/output.js';
import { boundary, leastOfConvex } from '../numerics/boundary.js';
import { costOf, costPerFeed, costPerRun } from './cost.js';
import type { CostPlan, RunPlan } from './input.js';
import { permeabilitiesOf } from './resistance.js';
import { flatAtLimit, type Run, runOf } from './run.js';
import { lastShare } from './turnedFlow.js';

/** Runs of one plan at any body feed. Whether there is a run does not depend on the feed. */
export function runsOf(plan: RunPlan): ((bodyFeed: number) => Run) | NoAnswer {
  const today = runOf(plan);
  return isNoAnswer(today) ? today : (bodyFeed) => runOf(plan, bodyFeed) as Run;
}

/** How ln(1/run) changes with the solids per m³ of beer. The limit that ends the run decides. */
function logarithmicSlope({ plan, solids, flowing, start, until, volume }: Run): number {
  if (volume === until['run limit']) return 0;
  if (volume === until['cake space']) return 1 / solids.total;
  const flat = flatAtLimit(plan.pressureLimit, start, flowing, lastShare(plan));
  const eased = (hindrance(solids, permeabilitiesOf(plan)) / solids.total ** 2) * loadGrowth(flat, plan);
  return 1 / solids.total - eased;
}

/** How 1/run changes with the body feed as bought. 1/run is the largest of convex branches, so it is convex. */
const inverseRunSlope = (run: Run): number => ((1 - run.plan.aidMoisture) * logarithmicSlope(run)) / run.volume;

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** The body feed of the longest run within a span. */
export function longestRun(runs: (bodyFeed: number) => Run, { from, to }: Span): Run {
  const { before, beyond } = leastOfConvex((bodyFeed) => inverseRunSlope(runs(bodyFeed)), from, to);
  const [one, other] = [runs(before), runs(beyond)];
  return one.volume > other.volume ? one : other;
}

export interface Costed {
  readonly run: Run;
  readonly cost: number;
}

const costed = (plan: CostPlan, run: Run): Costed => ({ run, cost: costOf(plan, run) });

/** The body feed of least cost within a span: cost is linear in the feed plus a multiple of 1/run, so convex too. */
export function leastCost(plan: CostPlan, runs: (bodyFeed: number) => Run, { from, to }: Span): Costed {
  const perRun = costPerRun(plan);
  const perFeed = costPerFeed(plan);
  const slope = (bodyFeed: number) => perFeed + perRun * inverseRunSlope(runs(bodyFeed));
  const { before, beyond } = leastOfConvex(slope, from, to);
  const [one, other] = [costed(plan, runs(before)), costed(plan, runs(beyond))];
  return one.cost < other.cost ? one : other;
}

/** The part of a span around a place where a question is answered yes, both ends exact. */
export function stretch(holds: (bodyFeed: number) => boolean, around: number, { from, to }: Span): Span {
  const end = (far: number) => (holds(far) ? far : boundary((bodyFeed) => !holds(bodyFeed), around, far).before);
  return { from: end(from), to: end(to) };
}
