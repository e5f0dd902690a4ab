import { isNoAnswer } from '../../../../src/core/evaluate.js';
import type { NoAnswer } from '../../../../src/core/output.js';
import { fromSI } from '../../../../src/core/units.js';
import { feedCurve } from '../../../../src/plan/feedCurve.js';
import type { Key } from '../../../../src/plan/ranges.js';
import { labelOf } from '../../../../src/plan/ranges.js';
import { sensitivity } from '../../../../src/plan/sensitivity.js';
import { swingsOf } from '../../../../src/plan/swings.js';
import type { BarLine, Picture } from '../picture.js';
import { axisOf, figureOf } from './figure.js';

/** Narrower bars than the first so many would be mere lines. */
const MOST_LINES = 20;

const { item, atLow, atHigh, change } = sensitivity.output.fields;

export const sensitivityFigure = figureOf(sensitivity, ({ labels }, _, speech): Picture | NoAnswer => {
  const { words, amount, count } = speech;
  const found = swingsOf(labels);
  if (isNoAnswer(found)) return found;
  const { swings, middle, idle } = found;
  const cost = (si: number) => fromSI(si, atLow.unit);
  const end = (key: Key, which: 'low' | 'high') =>
    amount((labels[which] as Record<string, number>)[key] ?? 0, labelOf(key).unit);
  const bar = (set: 0 | 1, si: number | undefined) =>
    si === undefined ? [] : [{ set, from: cost(middle), to: cost(si) }];
  const shown = swings.slice(0, MOST_LINES);
  const lines = shown.map((swing): BarLine => {
    const gone = swing.atLow === undefined || swing.atHigh === undefined;
    const ends = words.sensitivity.ends(end(swing.key, 'low'), end(swing.key, 'high'));
    return {
      label: labelOf(swing.key).label,
      note: gone ? words.sensitivity.noRun(ends) : ends,
      bars: [...bar(0, swing.atLow), ...bar(1, swing.atHigh)],
    };
  });
  const [widest] = swings;
  return {
    title: words.sensitivity.title,
    summary: [
      words.sensitivity.middle(amount(middle, atLow.unit)),
      ...(widest ? [words.sensitivity.widest(labelOf(widest.key).label)] : []),
      ...(shown.length < swings.length ? [words.sensitivity.some(count(shown.length), count(swings.length))] : []),
      ...(idle > 0 ? [words.sensitivity.idle(count(idle))] : []),
    ].join(' '),
    bars: {
      axis: axisOf(feedCurve.output.fields.cost),
      sets: words.sensitivity.sets,
      lines,
      level: { at: cost(middle), text: amount(middle, atLow.unit) },
    },
    notes: [{ text: words.sensitivity.note }],
    table: {
      columns: [{ label: item.label, unit: '' }, atLow, atHigh, change],
      rows: swings.map((swing) => [
        labelOf(swing.key).label,
        ...[swing.atLow, swing.atHigh].map((si) => (si === undefined ? words.sensitivity.none : cost(si))),
        swing.atLow === undefined || swing.atHigh === undefined ? '' : cost(swing.atHigh) - cost(swing.atLow),
      ]),
    },
  };
});
