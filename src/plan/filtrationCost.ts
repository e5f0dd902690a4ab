import { calculation } from '../core/calculation.js';
import { isNoAnswer } from '../core/evaluate.js';
import { fromSI, type Unit } from '../core/units.js';
import { labelled } from '../core/wording.js';
import { busyTime, filteringOf, YEAR } from './capacity.js';
import { COST_ITEMS, itemCost, spentCake } from './cost.js';
import { EXAMPLE } from './example.js';
import { planInput, YEAR_GROUPS, type YearPlan } from './input.js';
import { powderPerRun } from './powder.js';
import { type Run, runOf } from './run.js';
import { MIX_SOURCES } from './sources.js';

interface Line {
  readonly item: string;
  readonly perHl: number | undefined;
  readonly perYear: number;
}

/** What a year takes: label, unit, and the amount in SI. */
const QUANTITIES: readonly (readonly [string, Unit, (plan: YearPlan, run: Run, runs: number) => number])[] = [
  ['Runs', '', (_, __, runs) => runs],
  ['Powder as bought', 't', (_, run, runs) => powderPerRun(run) * runs],
  ['Spent cake', 't', (plan, run, runs) => spentCake(plan, run) * runs],
  ['Water', 'm³', (plan, _, runs) => plan.runWater * runs],
  ['Beer lost', 'hL', (plan, _, runs) => plan.runBeerLoss * runs],
  ['Filtering', 'h', filteringOf],
  ['Turnaround', 'h', (plan, _, runs) => plan.turnaround * runs],
  ['Filtering and turnaround', 'h', busyTime],
  ['Hours that one filter does not have', 'h', (plan, run) => Math.max(0, busyTime(plan, run) - YEAR)],
];

const costs = (plan: YearPlan, run: Run): Line[] => {
  const lines = COST_ITEMS.map((item) => {
    const perHl = itemCost(item, plan, run);
    return { item: item.label, perHl, perYear: perHl * plan.yearVolume };
  });
  const total = lines.reduce((sum, { perHl }) => sum + perHl, 0);
  return [...lines, { item: 'Total', perHl: total, perYear: total * plan.yearVolume }];
};

const quantities = (plan: YearPlan, run: Run): Line[] =>
  QUANTITIES.map(([label, unit, amount]) => ({
    item: labelled(label, unit),
    perHl: undefined,
    perYear: fromSI(amount(plan, run, plan.yearVolume / run.volume), unit),
  }));

export const filtrationCost = calculation({
  id: 'FILTRATIONCOST',
  summary: 'What filtration costs, item by item, per hL and per year, and what a year takes.',
  question: 'What does filtration cost, and where does the money go?',
  inputs: { labels: planInput(YEAR_GROUPS) },
  output: {
    kind: 'table',
    fields: {
      item: { label: 'Item', text: true },
      perHl: { label: 'Cost', unit: 'money/hL' },
      perYear: { label: 'Per year', unit: 'money' },
    },
  },
  method:
    'cost of a run over its beer, plus what each hL takes; per year = per hL × year volume. Spent cake = dry solids on the filter / dry matter. Below the total stand quantities per year, each in the unit of its label; the last is what filtering and turnaround take beyond the 8760 h of a year',
  sources: ['Balance of mass and money over one run.', ...MIX_SOURCES],
  cautions: ['dust'],
  example: { given: { labels: EXAMPLE }, result: { rows: COST_ITEMS.length + 1 + QUANTITIES.length } },
  compute: ({ labels: { values } }) => {
    const run = runOf(values);
    return isNoAnswer(run) ? run : [...costs(values, run), ...quantities(values, run)];
  },
});
