import type { RunPlan } from './input.js';

/** Dry solids, SI: per m³ of beer, and the precoat per m² of septum. */
export interface Solids {
  readonly aid: number;
  readonly stabiliser: number;
  readonly beer: number;
  readonly total: number;
  readonly precoat: number;
}

/** What comes to the cake, dry, at the plan's body feed or another one. */
export function solidsOf(plan: RunPlan, bodyFeed = plan.bodyFeed): Solids {
  const aid = bodyFeed * (1 - plan.aidMoisture);
  const stabiliser = (1 - plan.stabiliserRemoved) * plan.stabiliserDose * (1 - plan.stabiliserMoisture);
  const beer = plan.beerSolids;
  return { aid, stabiliser, beer, total: aid + stabiliser + beer, precoat: plan.precoatLoad * (1 - plan.aidMoisture) };
}
