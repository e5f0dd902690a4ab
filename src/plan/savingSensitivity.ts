import { calculation } from '../core/calculation.js';
import { isNoAnswer } from '../core/evaluate.js';
import type { NoAnswer } from '../core/output.js';
import { comparedRuns } from './comparedPlans.js';
import { costOf } from './cost.js';
import { planColumns, YEAR_GROUPS, type YearPlan } from './input.js';
import { SWAP_EXAMPLE } from './rangeExample.js';
import { itemOf, type Key, variedKeys } from './ranges.js';
import { MIX_SOURCES } from './sources.js';
import { endsOf, SPREAD_COLUMNS, spreadRefusal } from './spreadEnds.js';
import { type End, middlePlan, noMiddle, swing, swingColumns, widestFirst } from './swings.js';

interface Plans {
  readonly present: YearPlan;
  readonly proposed: YearPlan;
}

type Ends = Readonly<Record<End, YearPlan>>;
type Side = keyof Plans;

const SIDES: readonly Side[] = ['present', 'proposed'];
const savedBy = (plans: Plans): number | NoAnswer => {
  const runs = comparedRuns(plans);
  if (isNoAnswer(runs)) return runs;
  return (costOf(plans.present, runs.present) - costOf(plans.proposed, runs.proposed)) * plans.present.yearVolume;
};

/** A label with the same ends in both plans is one quantity; with others it is one of each plan’s own. */
function quantitiesOf(
  ends: Readonly<Record<Side, Ends>>,
): readonly (readonly [key: Key & keyof YearPlan, sides: readonly Side[]])[] {
  const { present, proposed } = ends;
  const keys = [...new Set([...variedKeys(present), ...variedKeys(proposed)])] as (Key & keyof YearPlan)[];
  return keys.flatMap((key): (readonly [Key & keyof YearPlan, readonly Side[]])[] => {
    if (present.low[key] === proposed.low[key] && present.high[key] === proposed.high[key]) return [[key, SIDES]];
    return SIDES.filter((side) => ends[side].low[key] !== ends[side].high[key]).map((side) => [key, [side]]);
  });
}

const NAMES: Readonly<Record<Side, string>> = { present: 'Present', proposed: 'Proposed' };

export const savingSensitivity = calculation({
  id: 'SAVINGSENSITIVITY',
  summary: 'How far each uncertain label moves a year’s saving, widest first.',
  question: 'Which of my guesses moves the saving most?',
  inputs: { labels: planColumns(YEAR_GROUPS, SPREAD_COLUMNS) },
  output: {
    kind: 'table',
    fields: {
      item: { label: 'Label', text: true },
      plan: { label: 'Plan', text: true },
      atLow: { label: 'Saving at low end', unit: 'money' },
      atHigh: { label: 'Saving at high end', unit: 'money' },
      change: { label: 'Change', unit: 'money' },
      remark: { label: 'Remark', text: true },
    },
  },
  method:
    'saving in the year = (present − proposed cost per hL) × year volume; one label at a time at both its ends, all others in the middle of theirs: half-way, on a log scale (darcy, m/kg) the geometric mean. A label with the same ends in both plans moves in both together, as in SAVINGSPREAD. Widest first; the last row gives the saving with all in the middle. Labels that do nothing are left out',
  sources: ['One-at-a-time sensitivity: what two labels do together is not seen.', ...MIX_SOURCES],
  cautions: ['dust'],
  example: {
    given: {
      labels: SWAP_EXAMPLE,
    },
    result: { rows: 6 },
  },
  refuse: ({ labels }) => spreadRefusal(labels),
  compute: ({ labels }) => {
    const ends = endsOf(labels);
    const plans = { present: middlePlan(ends.present), proposed: middlePlan(ends.proposed) };
    const between = savedBy(plans);
    if (isNoAnswer(between)) return noMiddle(between);
    const runs = comparedRuns(plans);
    const scale = isNoAnswer(runs) ? 0 : costOf(plans.present, runs.present) * plans.present.yearVolume;
    const swings = quantitiesOf(ends).map(([key, sides]) => {
      const at = (end: End) => {
        const moved = sides.map((side) => [side, { ...plans[side], [key]: ends[side][end][key] }]);
        return savedBy({ ...plans, ...Object.fromEntries(moved) });
      };
      return { key, sides, ...swing(at, between) };
    });
    return [
      ...widestFirst(swings, scale).map(({ key, sides, ...one }) => ({
        item: itemOf(key),
        plan: sides.length === 2 ? 'both' : NAMES[sides[0] as Side],
        ...swingColumns(one),
      })),
      { item: 'All in the middle', plan: '', atLow: between, atHigh: between, change: 0, remark: '' },
    ];
  },
});
