import { flatLoad, loadOfFlat, REFERENCE } from '../cake/pressureDrop.js';
import type { RunPlan } from './input.js';
import { resistanceOf } from './resistance.js';
import { type End, endsAmong } from './run.js';
import { solidsOf } from './solids.js';
import { startOf } from './start.js';

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
}

/** What the cake has come to: dry solids laid on the precoat, and Σ α Δw over the flat load. */
interface Cake {
  readonly laid: number;
  readonly resisting: number;
}

/**
 * A run through steps. Layers of one flow add up: Δp_cake^(1−n) = μ u (1 bar)^−n Σ α Δw, each layer with the resistance of its
 * own mix, since the power law adds up what each layer squeezes.
 */
export function steppedRun(steps: readonly Step[]): readonly Stepped[] {
  const done: Stepped[] = [];
  let cake: Cake = { laid: 0, resisting: 0 };
  let volume = 0;
  for (const { volume: beer, plan } of steps) {
    const solids = solidsOf(plan);
    const alpha = resistanceOf(plan, solids);
    const perBeer = solids.total / plan.area;
    const flat = (laid: number) => flatLoad(laid, plan, solids.precoat);
    const after = (laid: number): Cake => ({
      laid,
      resisting: cake.resisting + alpha * (flat(laid) - flat(cake.laid)),
    });
    const room = {
      pressure:
        (loadOfFlat(flat(cake.laid) + (resistingAt(plan) - cake.resisting) / alpha, plan, solids.precoat) - cake.laid) /
        perBeer,
      'cake space': (plan.cakeSpace - solids.precoat - cake.laid) / perBeer,
      'run limit': plan.runLimit === 0 ? Number.POSITIVE_INFINITY : plan.runLimit - volume,
    };
    const until = Math.max(0, Math.min(beer, ...Object.values(room)));
    const before = pressureOver(cake, plan);
    cake = after(cake.laid + perBeer * until);
    volume += until;
    const pressure = pressureOver(cake, plan);
    const ended = until < beer;
    done.push({
      volume,
      pressure,
      load: solids.precoat + cake.laid,
      rise: until > 0 ? ((pressure - before) * plan.flow) / until : 0,
      ends: ended ? endsAmong(room, until) : [],
    });
    if (ended) break;
  }
  return done;
}

const driving = ({ viscosity, flow, area }: RunPlan): number => (viscosity * flow) / area;

const pressureOver = ({ resisting }: Cake, plan: RunPlan): number =>
  startOf(plan) + REFERENCE * ((driving(plan) * resisting) / REFERENCE) ** (1 / (1 - plan.compressibility));

/** Σ α Δw at the pressure drop limit. */
const resistingAt = (plan: RunPlan): number =>
  (REFERENCE * (Math.max(0, plan.pressureLimit - startOf(plan)) / REFERENCE) ** (1 - plan.compressibility)) /
  driving(plan);
