import { calculation } from '../core/calculation.js';
import { isNoAnswer } from '../core/evaluate.js';
import { COMPARED, comparedRuns, yearRefusal } from './comparedPlans.js';
import { COST_ITEMS, itemCost } from './cost.js';
import { planColumns, YEAR_GROUPS, type YearPlan } from './input.js';
import { comparedMixRefusal } from './mixRefusal.js';
import { MIX_SOURCES } from './sources.js';
import { SWAP_EXAMPLE } from './swapExample.js';

interface Sides {
  readonly item: string;
  readonly present: number;
  readonly proposed: number;
}

const total = (items: readonly Sides[], side: 'present' | 'proposed'): number =>
  items.reduce((sum, item) => sum + item[side], 0);

const line = ({ item, present, proposed }: Sides, { yearVolume }: YearPlan) => ({
  item,
  present,
  proposed,
  saved: present - proposed,
  presentYear: present * yearVolume,
  proposedYear: proposed * yearVolume,
  savedYear: (present - proposed) * yearVolume,
});

export const saving = calculation({
  id: 'SAVING',
  summary: 'Two plans side by side, item by item, and what the proposed one saves.',
  question: 'Where does the saving come from, and what gets dearer?',
  inputs: { labels: planColumns(YEAR_GROUPS, COMPARED) },
  output: {
    kind: 'table',
    fields: {
      item: { label: 'Item', text: true },
      present: { label: 'Present', unit: 'money/hL' },
      proposed: { label: 'Proposed', unit: 'money/hL' },
      saved: { label: 'Saved', unit: 'money/hL' },
      presentYear: { label: 'Present per year', unit: 'money' },
      proposedYear: { label: 'Proposed per year', unit: 'money' },
      savedYear: { label: 'Saved per year', unit: 'money' },
    },
  },
  method:
    'each item as in FILTRATIONCOST, each plan on its own run; saved = present − proposed, below 0 where the proposed plan is dearer; per year = per hL × year volume, which must be the same in both',
  sources: ['Balance of mass and money over one run of each plan.', ...MIX_SOURCES],
  cautions: ['dust'],
  example: { given: { labels: SWAP_EXAMPLE }, result: { rows: COST_ITEMS.length + 1 } },
  refuse: ({ labels }) => yearRefusal(labels) ?? comparedMixRefusal(labels.present, labels.proposed),
  compute: ({ labels: plans }) => {
    const runs = comparedRuns(plans);
    if (isNoAnswer(runs)) return runs;
    const items = COST_ITEMS.map((item) => ({
      item: item.label,
      present: itemCost(item, plans.present, runs.present),
      proposed: itemCost(item, plans.proposed, runs.proposed),
    }));
    const all = { item: 'Total', present: total(items, 'present'), proposed: total(items, 'proposed') };
    return [...items, all].map((sides) => line(sides, plans.present));
  },
});
