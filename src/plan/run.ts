import {
  cakePressureDrop,
  type Flowing,
  flatLoad,
  flatLoadAt,
  flatPerLoad,
  loadOfFlat,
  pressurePerLoad,
} from '../cake/pressureDrop.js';
import type { NoAnswer } from '../core/output.js';
import { figure } from '../core/wording.js';
import type { RunPlan } from './input.js';
import { resistanceOf } from './resistance.js';
import { type Solids, solidsOf } from './solids.js';
import { startOf } from './start.js';
import { lastShare, shareHolding, slowed, turnedTo } from './turnedFlow.js';

/** Ends that lie so close together count as one. */
const TIE = 1e-9;

export type End = 'pressure' | 'cake space' | 'run limit';

/** A run to its end, SI. */
export interface Run {
  readonly plan: RunPlan;
  /** As bought, kg per m³ of beer. */
  readonly bodyFeed: number;
  readonly solids: Solids;
  readonly flowing: Flowing;
  /** Start pressure drop at this flow, viscosity and precoat, Pa. */
  readonly start: number;
  /** Beer until the pressure drop limit is reached; from there on the flow is turned down, where it is. */
  readonly full: number;
  /** Beer until each limit, m³. */
  readonly until: Readonly<Record<End, number>>;
  readonly volume: number;
}

/** Flux and resistance of a plan's run. */
const flowingOf = (plan: RunPlan, solids: Solids): Flowing => ({
  flux: plan.flow / plan.area,
  viscosity: plan.viscosity,
  resistance: resistanceOf(plan, solids),
  compressibility: plan.compressibility,
});

/** The flat load at which the pressure drop stands at its limit with this share of the flow. */
export const flatAtLimit = (limit: number, start: number, flowing: Flowing, share: number): number =>
  flatLoadAt(limit - start * share, turnedTo(flowing, share));

/** The run of a plan at its body feed or another one, or why there is none. Closed form. */
export function runOf(plan: RunPlan, bodyFeed = plan.bodyFeed): Run | NoAnswer {
  const { pressureLimit, cakeSpace } = plan;
  const start = startOf(plan);
  if (!(pressureLimit > start)) {
    return {
      none: `No run: the pressure drop limit, ${figure(pressureLimit, 'bar')}, does not lie above the start pressure drop, ${figure(start, 'bar')}.`,
    };
  }
  const solids = solidsOf(plan, bodyFeed);
  if (!(cakeSpace > solids.precoat)) {
    return {
      none: `No run: the precoat alone, ${figure(solids.precoat, 'kg/m²')} dry, fills the cake space of ${figure(cakeSpace, 'kg/m²')}.`,
    };
  }
  const flowing = flowingOf(plan, solids);
  const perLoad = plan.area / solids.total;
  const volumeAt = (share: number) => volumeHolding({ plan, solids, flowing, start }, share);
  const share = lastShare(plan);
  const until = {
    pressure: volumeAt(share),
    'cake space': (cakeSpace - solids.precoat) * perLoad,
    'run limit': plan.runLimit === 0 ? Number.POSITIVE_INFINITY : plan.runLimit,
  };
  return {
    plan,
    bodyFeed,
    solids,
    flowing,
    start,
    full: share === 1 ? until.pressure : volumeAt(1),
    until,
    volume: Math.min(until.pressure, until['cake space'], until['run limit']),
  };
}

/** The limits that are reached first; a tie has all. */
export const endsAmong = (until: Run['until'], volume: number): readonly End[] =>
  (Object.keys(until) as End[]).filter((end) => until[end] <= volume * (1 + TIE));

/** What ends the run. */
export const endsOf = ({ until, volume }: Run): readonly End[] => endsAmong(until, volume);

/** What ends the run, in words; a tie names all. */
export const endsBy = (run: Run): string => endsOf(run).join(' and ');

/** Dry solids laid on the precoat after so much beer, kg per m² of septum. */
const laidAfter = ({ plan, solids }: Run, volume: number): number => (solids.total * volume) / plan.area;

/** Dry solids on the septum after so much beer, precoat included. */
export const loadAfter = (run: Run, volume: number): number => run.solids.precoat + laidAfter(run, volume);

/** Flat load after so much beer. */
const flatAfter = (run: Run, volume: number): number => flatLoad(laidAfter(run, volume), run.plan, run.solids.precoat);

/** Pressure drop after so much beer, Pa. */
export const pressureAfter = (run: Run, volume: number): number =>
  volume > run.full ? run.plan.pressureLimit : run.start + cakePressureDrop(flatAfter(run, volume), run.flowing);

/** How fast the pressure drop rises after so much beer, Pa/s; not at all where the flow is turned down. */
export function riseAfter(run: Run, volume: number): number {
  if (volume > run.full) return 0;
  const { plan, solids, flowing } = run;
  const laid = laidAfter(run, volume);
  const perLoad = pressurePerLoad(flatAfter(run, volume), flowing) * flatPerLoad(laid, plan, solids.precoat);
  return perLoad * solids.total * flowing.flux;
}

/** Mean rise from the first beer on over so much beer, Pa/s. */
export const meanRiseOver = (run: Run, volume: number): number =>
  (pressureAfter(run, volume) - run.start) / timeFor(run, volume);

/** Beer until the pressure drop stands at its limit with this share of the flow. */
function volumeHolding(
  { plan, solids, flowing, start }: Pick<Run, 'plan' | 'solids' | 'flowing' | 'start'>,
  share: number,
) {
  const flat = flatAtLimit(plan.pressureLimit, start, flowing, share);
  return (loadOfFlat(flat, plan, solids.precoat) * plan.area) / solids.total;
}

/** Flow after so much beer, m³/s. */
const flowAfter = (run: Run, volume: number): number =>
  run.plan.flow *
  (volume > run.full ? shareHolding(run.plan.pressureLimit, run.start, flatAfter(run, volume), run.flowing) : 1);

/** Filtering time for so much beer, s. */
export const timeFor = (run: Run, volume: number): number =>
  volume <= run.full
    ? volume / run.plan.flow
    : (run.full + slowed(flowAfter(run, volume) / run.plan.flow, (share) => volumeHolding(run, share))) / run.plan.flow;
