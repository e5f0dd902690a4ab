import { calculation } from '../core/calculation.js';
import { isNoAnswer } from '../core/evaluate.js';
import type { NoAnswer } from '../core/output.js';
import { toSI } from '../core/units.js';
import { labelled } from '../core/wording.js';
import { comparedRuns } from './comparedPlans.js';
import { costOf } from './cost.js';
import { planColumns, YEAR_GROUPS, type YearPlan } from './input.js';
import { RANGE_EXAMPLE } from './rangeExample.js';
import { type Key, labelOf, middleOf, variedKeys } from './ranges.js';
import { MIX_SOURCES } from './sources.js';
import { endsOf, SPREAD_COLUMNS, spreadRefusal } from './spreadEnds.js';

interface Plans {
  readonly present: YearPlan;
  readonly proposed: YearPlan;
}

type Ends = { readonly low: YearPlan; readonly high: YearPlan };
type Side = keyof Plans;

const SIDES: readonly Side[] = ['present', 'proposed'];
/** Savings that differ by less than this share of the cost differ by rounding only. */
const SAME = 1e-12;

const savedBy = (plans: Plans): number | NoAnswer => {
  const runs = comparedRuns(plans);
  if (isNoAnswer(runs)) return runs;
  return (costOf(plans.present, runs.present) - costOf(plans.proposed, runs.proposed)) * plans.present.yearVolume;
};

function middle({ low, high }: Ends): YearPlan {
  const keys = variedKeys({ low, high }) as readonly (Key & keyof YearPlan)[];
  return {
    ...low,
    ...Object.fromEntries(keys.map((key) => [key, middleOf(key, low[key] as number, high[key] as number)])),
  };
}

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
      labels: {
        presentLow: RANGE_EXAMPLE.present.low,
        presentHigh: RANGE_EXAMPLE.present.high,
        proposedLow: RANGE_EXAMPLE.proposed.low,
        proposedHigh: RANGE_EXAMPLE.proposed.high,
      },
    },
    result: { rows: 6 },
  },
  refuse: ({ labels }) => spreadRefusal(labels),
  compute: ({ labels }) => {
    const ends = endsOf(labels);
    const plans = { present: middle(ends.present), proposed: middle(ends.proposed) };
    const between = savedBy(plans);
    if (isNoAnswer(between)) return { none: `With every label in the middle of its ends: ${between.none}` };
    const runs = comparedRuns(plans);
    const scale = isNoAnswer(runs) ? 0 : costOf(plans.present, runs.present) * plans.present.yearVolume;
    const rows = quantitiesOf(ends).map(([key, sides]) => {
      const at = (end: 'low' | 'high'): number | undefined => {
        const moved = Object.fromEntries(
          SIDES.map((side) => [
            side,
            sides.includes(side) ? { ...plans[side], [key]: ends[side][end][key] } : plans[side],
          ]),
        ) as unknown as Plans;
        // The same beer is filtered either way: a volume that is not sure is one volume.
        const saved = savedBy(moved);
        return isNoAnswer(saved) ? undefined : saved;
      };
      const [atLow, atHigh] = [at('low'), at('high')];
      const missing = [
        atLow === undefined ? 'No run at its low end.' : '',
        atHigh === undefined ? 'No run at its high end.' : '',
      ];
      const width =
        atLow === undefined || atHigh === undefined
          ? Number.POSITIVE_INFINITY
          : Math.max(atLow, between, atHigh) - Math.min(atLow, between, atHigh);
      return {
        width,
        row: {
          item: labelled(labelOf(key).label, labelOf(key).unit),
          plan: sides.length === 2 ? 'both' : (NAMES[sides[0] as Side] ?? ''),
          atLow,
          atHigh,
          change: atLow === undefined || atHigh === undefined ? undefined : atHigh - atLow,
          remark: missing.filter((one) => one !== '').join(' '),
        },
      };
    });
    const moving = rows.filter(({ width }) => width > SAME * Math.abs(scale));
    moving.sort((one, other) => (one.width === other.width ? 0 : other.width - one.width));
    return [
      ...moving.map(({ row }) => row),
      { item: 'All in the middle', plan: '', atLow: between, atHigh: between, change: toSI(0, 'money'), remark: '' },
    ];
  },
});
