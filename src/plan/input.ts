import type { Plan } from '../core/input.js';
import { planRefusal } from './cakeRefusal.js';
import { PLAN, type PlanGroup } from './table.js';

/** What a run's length depends on. */
export const RUN_GROUPS = ['filter', 'powder', 'cake'] as const;
/** What its cost per hL depends on. */
export const COST_GROUPS = [...RUN_GROUPS, 'prices'] as const;
/** What its cost per year depends on. */
export const YEAR_GROUPS = [...COST_GROUPS, 'year'] as const;

export type RunPlan = Plan<typeof PLAN, (typeof RUN_GROUPS)[number]>;
export type CostPlan = Plan<typeof PLAN, (typeof COST_GROUPS)[number]>;
export type YearPlan = Plan<typeof PLAN, (typeof YEAR_GROUPS)[number]>;

interface Said {
  readonly label: string;
  readonly help: string;
}

const VALUES = { values: { label: 'Values', help: 'A column of values beside the labels, one plan.' } } as const;

/** The plan as an input: labels and one column of values, or the columns that are named. */
export function planColumns<const G extends readonly PlanGroup[], const C extends Readonly<Record<string, Said>>>(
  groups: G,
  columns: C,
) {
  return {
    kind: 'plan',
    label: 'Labels',
    help: 'A column of plan labels, in any order; blank ones are skipped.',
    table: PLAN,
    groups,
    columns,
    refuse: planRefusal,
  } as const;
}

export const planInput = <const G extends readonly PlanGroup[]>(groups: G) => planColumns(groups, VALUES);
