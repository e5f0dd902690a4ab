import { beerSolids, bodyFeed, dose, viscosity } from '../quantities.js';
import { cakeRefusal } from './cakeRefusal.js';
import type { CostPlan, RunPlan } from './input.js';
import { PLAN, type PlanGroup } from './table.js';

/** What each of several beers has for itself, where they share filter, powders and prices. */
export const OWN_FIGURES = {
  viscosity: { ...viscosity, label: PLAN.viscosity.label, help: PLAN.viscosity.help },
  beerSolids: { ...beerSolids, limit: PLAN.beerSolids.limit, help: PLAN.beerSolids.help },
  bodyFeed,
  stabiliserDose: {
    ...dose,
    label: PLAN.stabiliserDose.label,
    usual: PLAN.stabiliserDose.usual,
    help: PLAN.stabiliserDose.help,
  },
} as const;

type Own = { readonly [K in keyof typeof OWN_FIGURES]: number };

const shared = <L>(label: L) => ({ ...label, optional: true }) as const;

/** The plan’s table, in which what each beer has for itself may be missing. */
const SHARED_PLAN = {
  ...PLAN,
  viscosity: shared(PLAN.viscosity),
  beerSolids: shared(PLAN.beerSolids),
  bodyFeed: shared(PLAN.bodyFeed),
  stabiliserDose: shared(PLAN.stabiliserDose),
} as const;

/** What all beers share, as a plan without each beer’s own figures. */
export const sharedPlan = <const G extends readonly PlanGroup[]>(groups: G) =>
  ({
    kind: 'plan',
    label: 'Labels',
    help: 'A column of plan labels that all beers share, in any order; those of each beer’s own figures may be left out and are not read.',
    table: SHARED_PLAN,
    groups,
    columns: { values: { label: 'Values', help: 'A column of values beside the labels: what all beers share.' } },
  }) as const;

type Shared<P> = Omit<P, keyof Own> & { readonly [K in keyof Own]?: number | undefined };

/** One beer’s whole plan. */
export const planOfBeer = <P extends RunPlan | CostPlan>(
  values: Shared<P>,
  { viscosity, beerSolids, bodyFeed, stabiliserDose }: Own,
): P => ({ ...values, viscosity, beerSolids, bodyFeed, stabiliserDose }) as unknown as P;

export const beerRefusal = (values: Shared<RunPlan>, own: Own): string | undefined =>
  cakeRefusal(planOfBeer<RunPlan>(values, own))?.sentence;
