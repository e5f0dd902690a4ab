import { calculation } from '../core/calculation.js';
import { isNoAnswer } from '../core/evaluate.js';
import { toSI } from '../core/units.js';
import { COST_GROUPS, planColumns } from './input.js';
import { variedMixRefusal } from './mixRefusal.js';
import { RANGE_EXAMPLE } from './rangeExample.js';
import { itemOf, rangesRefusal } from './ranges.js';
import { MIX_SOURCES } from './sources.js';
import { swingColumns, swingsOf } from './swings.js';

const COLUMNS = {
  low: { label: 'Low', help: 'A column of values beside the labels: the low end of each, or its one value.' },
  high: { label: 'High', help: 'A column of values beside the labels: the high end of each, or the same value.' },
} as const;

const NAMES = { low: COLUMNS.low.label, high: COLUMNS.high.label } as const;

export const sensitivity = calculation({
  id: 'SENSITIVITY',
  summary: 'How far each uncertain label moves the cost per hL, widest first.',
  question: 'Which of my guesses matters most?',
  inputs: { labels: planColumns(COST_GROUPS, COLUMNS) },
  output: {
    kind: 'table',
    fields: {
      item: { label: 'Label', text: true },
      atLow: { label: 'Cost at low end', unit: 'money/hL' },
      atHigh: { label: 'Cost at high end', unit: 'money/hL' },
      change: { label: 'Change', unit: 'money/hL' },
      remark: { label: 'Remark', text: true },
    },
  },
  method:
    'one label at a time at both its ends, all others in the middle of theirs: half-way, on a log scale (darcy, m/kg) the geometric mean. Widest first, by the span of the costs at low end, middle and high end. Change = cost at high end − cost at low end, so below 0 the cost falls as the label grows. The last two rows give the cost with all in the middle, and how many labels with two ends do nothing and are left out',
  sources: ['One-at-a-time sensitivity: what two labels do together is not seen.', ...MIX_SOURCES],
  cautions: ['dust'],
  example: { given: { labels: RANGE_EXAMPLE.present }, result: { rows: 4 } },
  refuse: ({ labels: ends }) => rangesRefusal(ends, NAMES) ?? variedMixRefusal(ends.low, ends.high),
  compute: ({ labels: ends }) => {
    const found = swingsOf(ends);
    if (isNoAnswer(found)) return found;
    const { swings, middle, idle } = found;
    return [
      ...swings.map((one) => ({ item: itemOf(one.key), ...swingColumns(one) })),
      { item: 'All in the middle', atLow: middle, atHigh: middle, change: 0, remark: '' },
      {
        item: 'Labels without effect, left out',
        atLow: toSI(idle, 'money/hL'),
        atHigh: undefined,
        change: undefined,
        remark: 'A number of labels, not a cost.',
      },
    ];
  },
});
