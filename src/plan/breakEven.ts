import { calculation } from '../core/calculation.js';
import { isNoAnswer } from '../core/evaluate.js';
import { fromSI } from '../core/units.js';
import { amount, figure } from '../core/wording.js';
import { COMPARED, comparedRuns } from './comparedPlans.js';
import { costOf } from './cost.js';
import { COST_GROUPS, planColumns } from './input.js';
import { comparedMixRefusal } from './mixRefusal.js';
import { MIX_SOURCES } from './sources.js';
import { SWAP_EXAMPLE } from './swapExample.js';
import { PLAN } from './table.js';

export const breakEven = calculation({
  id: 'BREAKEVEN',
  summary: 'The price of the proposed stabiliser at which both plans cost the same per hL.',
  question: 'What may the new stabiliser cost at most?',
  inputs: { labels: planColumns(COST_GROUPS, COMPARED) },
  output: { kind: 'number', label: 'Break-even stabiliser price', unit: 'money/kg' },
  method:
    '(present cost per hL − proposed cost per hL without the stabiliser’s own price) / proposed stabiliser dose; the proposed Stabiliser price is not read',
  sources: ['Balance of money over one hL, each plan on its own run.', ...MIX_SOURCES],
  cautions: ['dust'],
  example: { given: { labels: SWAP_EXAMPLE }, result: 3.3146976322085617 },
  refuse: ({ labels: { present, proposed } }) => comparedMixRefusal(present, proposed),
  compute: ({ labels: plans }) => {
    const { present, proposed } = plans;
    if (proposed.stabiliserDose === 0) {
      return { none: 'No price breaks even: Stabiliser dose of Proposed is 0, so its price changes nothing.' };
    }
    const runs = comparedRuns(plans);
    if (isNoAnswer(runs)) return runs;
    const today = costOf(present, runs.present);
    const asGift = costOf({ ...proposed, stabiliserPrice: 0 }, runs.proposed);
    if (asGift > today) {
      return {
        none: `No price breaks even: with the stabiliser as a gift Proposed still costs ${figure(asGift, 'money/hL')}, more than Present with ${figure(today, 'money/hL')}.`,
      };
    }
    const price = (today - asGift) / proposed.stabiliserDose;
    const { limit, unit } = PLAN.stabiliserPrice;
    if (fromSI(price, unit) <= limit[1]) return price;
    return { none: `No price breaks even: it would lie above ${amount(limit[1], unit)}, the most that a plan takes.` };
  },
});
