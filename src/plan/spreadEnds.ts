import { yearRefusal } from './comparedPlans.js';
import type { YearPlan } from './input.js';
import { comparedMixRefusal, variedMixRefusal } from './mixRefusal.js';
import type { EndNames } from './ranges.js';
import { rangesRefusal } from './ranges.js';

const column = (label: string, end: string) => ({
  label,
  help: `A column of values beside the labels: the ${end} end of each label, or its one value.`,
});

/** Both plans, each with a low and a high end. */
export const SPREAD_COLUMNS = {
  presentLow: column('Present low', 'low'),
  presentHigh: column('Present high', 'high'),
  proposedLow: column('Proposed low', 'low'),
  proposedHigh: column('Proposed high', 'high'),
} as const;

type Plans = Readonly<Record<keyof typeof SPREAD_COLUMNS, YearPlan>>;

const PRESENT: EndNames = { low: SPREAD_COLUMNS.presentLow.label, high: SPREAD_COLUMNS.presentHigh.label };
const PROPOSED: EndNames = { low: SPREAD_COLUMNS.proposedLow.label, high: SPREAD_COLUMNS.proposedHigh.label };

export const endsOf = ({ presentLow, presentHigh, proposedLow, proposedHigh }: Plans) => ({
  present: { low: presentLow, high: presentHigh },
  proposed: { low: proposedLow, high: proposedHigh },
});

export function spreadRefusal(plans: Plans): string | undefined {
  const { present, proposed } = endsOf(plans);
  const lows = { present: present.low, proposed: proposed.low };
  const highs = { present: present.high, proposed: proposed.high };
  const sameResistance =
    present.low.cakeResistance === proposed.low.cakeResistance &&
    present.high.cakeResistance === proposed.high.cakeResistance;
  return (
    rangesRefusal(present, PRESENT) ??
    rangesRefusal(proposed, PROPOSED) ??
    yearRefusal(lows) ??
    yearRefusal(highs) ??
    variedMixRefusal(present.low, present.high, ' in Present') ??
    variedMixRefusal(proposed.low, proposed.high, ' in Proposed') ??
    (sameResistance ? comparedMixRefusal(present.low, proposed.low) : undefined)
  );
}
