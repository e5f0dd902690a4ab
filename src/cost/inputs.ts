import type { PlanLabel } from '../core/input.js';
import { priceLabels } from '../plan/labels/prices.js';
import { yearLabels } from '../plan/labels/year.js';
import { quantity, SLIPS } from '../quantity.js';

/** A plan's label as an input of its own, so that both say the same. */
function asInput<const L extends PlanLabel>({ group: _, ...label }: L) {
  return quantity(label);
}

export const dryMatter = asInput(priceLabels.dryMatter);
export const disposalPrice = asInput(priceLabels.disposalPrice);
export const yearVolume = asInput(yearLabels.yearVolume);

export const costOfBeer = quantity({
  label: 'Cost',
  unit: 'money/hL',
  limit: [0, 1e6],
  help: 'For each hL of beer.',
  source: SLIPS,
});
