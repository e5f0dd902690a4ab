import { calculation } from '../core/calculation.js';
import { isNoAnswer } from '../core/evaluate.js';
import { beerRefusal, OWN_FIGURES, planOfBeer, sharedPlan } from './beers.js';
import { COST_ITEMS, costOf, itemCost } from './cost.js';
import { sharedExample } from './example.js';
import { COST_GROUPS, type CostPlan } from './input.js';
import { runOf } from './run.js';
import { MIX_SOURCES } from './sources.js';

const TOTAL = 'Total';

export const beerCost = calculation({
  id: 'BEERCOST',
  summary: 'What filtration costs per hL, for each of several beers on the same filter, whole or by item.',
  question: 'Which of my beers is dear to filter, and why?',
  inputs: {
    labels: sharedPlan(COST_GROUPS),
    ...OWN_FIGURES,
    item: {
      kind: 'choice',
      label: 'Item',
      of: [...COST_ITEMS.map(({ label }) => label), TOTAL],
      preset: TOTAL,
      help: 'An item of FILTRATIONCOST, or Total; a row of items beside a column of beers makes a table.',
    },
  },
  output: { kind: 'number', label: 'Cost', unit: 'money/hL' },
  method: 'FILTRATIONCOST of the shared plan with each beer’s own figures, per hL',
  sources: ['Balance of mass and money over one run.', ...MIX_SOURCES],
  cautions: ['dust'],
  example: {
    given: {
      labels: { values: sharedExample() },
      ...{ viscosity: 2.8, beerSolids: 25, bodyFeed: 90, stabiliserDose: 60, item: 'Stabiliser' },
    },
    result: 0.144,
  },
  refuse: ({ labels, item: _, ...own }) => beerRefusal(labels.values, own),
  compute: ({ labels, item, ...own }) => {
    const plan = planOfBeer<CostPlan>(labels.values, own);
    const run = runOf(plan);
    if (isNoAnswer(run)) return run;
    const one = COST_ITEMS.find(({ label }) => label === item);
    return one ? itemCost(one, plan, run) : costOf(plan, run);
  },
});
