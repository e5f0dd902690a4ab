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

/** The run of a plan at its body feed or another one, or why there is none. Closed form. */
export function runOf(plan: RunPlan, bodyFeed = plan.bodyFeed): Run | NoAnswer {
  const { startPressure, pressureLimit, cakeSpace } = plan;
  if (!(pressureLimit > startPressure)) {
    return {
      none: `No run: the pressure drop limit, ${figure(pressureLimit, 'bar')}, does not lie above the start pressure drop, ${figure(startPressure, 'bar')}.`,
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
  const laid = loadOfFlat(flatLoadAt(pressureLimit - startPressure, flowing), plan, solids.precoat);
  const until = {
    pressure: laid * perLoad,
    'cake space': (cakeSpace - solids.precoat) * perLoad,
    'run limit': plan.runLimit === 0 ? Number.POSITIVE_INFINITY : plan.runLimit,
  };
  return {
    plan,
    bodyFeed,
    solids,
    flowing,
    until,
    volume: Math.min(until.pressure, until['cake space'], until['run limit']),
  };
}

/** What ends the run; a tie has all. */
export const endsOf = ({ until, volume }: Run): readonly End[] =>
  (Object.keys(until) as End[]).filter((end) => until[end] <= volume * (1 + TIE));

/** What ends the run, in words; a tie names all. */
export const endsBy = (run: Run): string => endsOf(run).join(' and ');

/** Dry solids laid on the precoat after so much beer, kg per m² of septum. */
const laidAfter = ({ plan, solids }: Run, volume: number): number => (solids.total * volume) / plan.area;

/** Dry solids on the septum after so much beer, precoat included. */
export const loadAfter = (run: Run, volume: number): number => run.solids.precoat + laidAfter(run, volume);

/** Pressure drop after so much beer, Pa. */
export const pressureAfter = (run: Run, volume: number): number =>
  run.plan.startPressure +
  cakePressureDrop(flatLoad(laidAfter(run, volume), run.plan, run.solids.precoat), run.flowing);

/** How fast the pressure drop rises after so much beer, Pa/s. */
export function riseAfter(run: Run, volume: number): number {
  const { plan, solids, flowing } = run;
  const laid = laidAfter(run, volume);
  const perLoad =
    pressurePerLoad(flatLoad(laid, plan, solids.precoat), flowing) * flatPerLoad(laid, plan, solids.precoat);
  return perLoad * solids.total * flowing.flux;
}

/** Mean rise from the first beer on over so much beer, Pa/s. */
export const meanRiseOver = (run: Run, volume: number): number =>
  (pressureAfter(run, volume) - run.plan.startPressure) / timeFor(run, volume);

/** Filtering time for so much beer, s. */
export const timeFor = ({ plan }: Run, volume: number): number => volume / plan.flow;
