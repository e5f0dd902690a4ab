import { type Flowing, flatLoad, loadOfFlat } from '../cake/pressureDrop.js';
import type { RunPlan } from './input.js';
import { resistanceOf } from './resistance.js';
import { type End, endsAmong, flatAtLimit } from './run.js';
import { solidsOf } from './solids.js';
import { startOf } from './start.js';
import { dropAt, lastShare, shareHolding, slowed } from './turnedFlow.js';

/** One step of a run: its beer, and what is dosed and brought meanwhile. */
export interface Step {
  readonly volume: number;
  readonly plan: RunPlan;
}

/** Where a run stands at the end of a step, SI. */
interface Stepped {
  /** Beer since the run began, m³. */
  readonly volume: number;
  readonly pressure: number;
  /** Dry solids on the septum, precoat included. */
  readonly load: number;
  /** Mean over the step, Pa/s. */
  readonly rise: number;
  readonly ends: readonly End[];
  /** Since the run began, s. */
  readonly time: number;
  /** At the end of the step: less than the plan's where it is turned down. */
  readonly flow: number;
}

/** What the cake has come to: dry solids laid on the precoat, and Σ α Δw over the flat load. */
interface Cake {
  readonly laid: number;
  readonly resisting: number;
}

/** A cake whose flat load is Σ α Δw resists by 1 for each of it. */
const flowingOf = ({ viscosity, flow, area, compressibility }: RunPlan): Flowing => ({
  flux: flow / area,
  viscosity,
  resistance: 1,
  compressibility,
});

/**
 * A run through steps. Layers of one flow add up: Δp_cake^(1−n) = μ u (1 bar)^−n Σ α Δw, each layer with the resistance of its
 * own mix, since the power law adds up what each layer squeezes.
 */
export function steppedRun(steps: readonly Step[]): readonly Stepped[] {
  const done: Stepped[] = [];
  let cake: Cake = { laid: 0, resisting: 0 };
  let volume = 0;
  let time = 0;
  for (const { volume: beer, plan } of steps) {
    const began = cake;
    const solids = solidsOf(plan);
    const alpha = resistanceOf(plan, solids);
    const perBeer = solids.total / plan.area;
    const flat = (laid: number) => flatLoad(laid, plan, solids.precoat);
    const volumeAt = (share: number) =>
      (loadOfFlat(flat(began.laid) + (resistingAt(plan, share) - began.resisting) / alpha, plan, solids.precoat) -
        began.laid) /
      perBeer;
    const room = {
      pressure: volumeAt(lastShare(plan)),
      'cake space': (plan.cakeSpace - solids.precoat - began.laid) / perBeer,
      'run limit': plan.runLimit === 0 ? Number.POSITIVE_INFINITY : plan.runLimit - volume,
    };
    const until = Math.max(0, Math.min(beer, ...Object.values(room)));
    const laid = began.laid + perBeer * until;
    cake = { laid, resisting: began.resisting + alpha * (flat(laid) - flat(began.laid)) };
    const [before, after] = [shareAt(began, plan), shareAt(cake, plan)];
    const spent = timeOf(until, before, after, volumeAt) / plan.flow;
    const pressure = pressureOver(cake, plan, after);
    volume += until;
    time += spent;
    const ended = until < beer;
    done.push({
      volume,
      pressure,
      load: solids.precoat + laid,
      rise: spent > 0 ? (pressure - pressureOver(began, plan, before)) / spent : 0,
      ends: ended ? endsAmong(room, until) : [],
      time,
      flow: plan.flow * after,
    });
    if (ended) break;
  }
  return done;
}

/** ∫ dV / share over a step: at the full flow first, then turned down from the share before to that after it. */
function timeOf(until: number, before: number, after: number, volumeAt: (share: number) => number): number {
  if (after === 1) return until;
  const full = before === 1 ? volumeAt(1) : 0;
  return full + slowed(after, volumeAt, before);
}

/** Share of the flow that keeps the pressure drop at its limit; 1 where the flow is not turned down. */
const shareAt = ({ resisting }: Cake, plan: RunPlan): number =>
  lastShare(plan) === 1 ? 1 : shareHolding(plan.pressureLimit, startOf(plan), resisting, flowingOf(plan));

const pressureOver = ({ resisting }: Cake, plan: RunPlan, share: number): number =>
  dropAt(startOf(plan), resisting, flowingOf(plan), share);

/** Σ α Δw at the pressure drop limit with this share of the flow. */
const resistingAt = (plan: RunPlan, share: number): number => {
  const start = startOf(plan);
  return flatAtLimit(Math.max(plan.pressureLimit, start * share), start, flowingOf(plan), share);
};
