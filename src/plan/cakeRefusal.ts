import type { PlanRefusal, PlanValues } from '../core/input.js';
import { PLAN } from './table.js';

const PERMEABILITIES = ['aidPermeability', 'beerSolidsPermeability', 'stabiliserPermeability'] as const;
const NEEDED = ['aidPermeability', 'beerSolidsPermeability'] as const;

/** "Body feed, Beer solids and Cake density". */
export const labelsInWords = (keys: readonly (keyof typeof PLAN)[]): string =>
  keys
    .map((key) => PLAN[key].label)
    .join(', ')
    .replace(/, ([^,]*)$/, ' and $1');

/** What does not go together in a plan. */
export const planRefusal = (plan: PlanValues): PlanRefusal | undefined => cakeRefusal(plan) ?? startRefusal(plan);

/** How much a precoat adds to the start is known by its permeability alone. */
function startRefusal(plan: PlanValues): PlanRefusal | undefined {
  if (!((plan.startPrecoat ?? 0) > 0) || plan.aidPermeability !== undefined) return undefined;
  const sentence =
    'Start read at precoat needs Aid permeability, which tells what a precoat adds to the start: give it, or leave Start read at precoat blank.';
  return { keys: ['startPrecoat'], sentence };
}

/** The two ways to say how the cake resists exclude each other, and one of them is needed whole. */
export function cakeRefusal(plan: PlanValues): PlanRefusal | undefined {
  if (plan.cakeDensity === undefined) return undefined;
  const given = PERMEABILITIES.filter((key) => plan[key] !== undefined);
  if (plan.cakeResistance !== undefined) {
    if (given.length === 0) return undefined;
    const sentence = `Give either Cake resistance or permeabilities, but ${labelsInWords(given)} ${given.length > 1 ? 'are' : 'is'} given as well. Leave one way blank.`;
    return { keys: ['cakeResistance', ...given], sentence };
  }
  const missing = NEEDED.filter((key) => plan[key] === undefined);
  if (missing.length > 0) {
    const sentence =
      given.length === 0
        ? 'Neither Cake resistance nor permeabilities are given. Fit the resistance on a log (FITRUN), or Aid permeability and Beer solids permeability on several (FITFEED).'
        : `${labelsInWords(missing)} ${missing.length > 1 ? 'are' : 'is'} missing or blank; the permeabilities stand together.`;
    return { keys: [...missing, ...(given.length === 0 ? ['cakeResistance'] : [])], sentence };
  }
  if (!((plan.stabiliserDose ?? 0) > 0) || plan.stabiliserPermeability !== undefined) return undefined;
  const sentence = 'Stabiliser permeability is missing or blank; it is needed wherever Stabiliser dose is above 0.';
  return { keys: ['stabiliserPermeability', 'stabiliserDose'], sentence };
}
