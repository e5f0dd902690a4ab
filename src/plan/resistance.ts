import { mixedResistance, type PartPermeabilities } from '../cake/parts.js';
import type { RunPlan } from './input.js';
import type { Solids } from './solids.js';

/** The permeabilities of a plan that gives them; a stabiliser that is not dosed has none of its own. */
export function permeabilitiesOf(plan: RunPlan): PartPermeabilities {
  const {
    aidPermeability: aid = 1,
    beerSolidsPermeability: beer = aid,
    stabiliserPermeability: stabiliser = aid,
  } = plan;
  return { aid, beer, stabiliser };
}

/** Specific resistance of the cake, m/kg: the fitted one, or from the permeabilities of its parts. */
export const resistanceOf = (plan: RunPlan, solids: Solids): number =>
  plan.cakeResistance ?? mixedResistance(solids, permeabilitiesOf(plan), plan.cakeDensity);
