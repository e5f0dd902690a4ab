import { fromSI } from '../../../../src/core/units.js';
import { feedCurve } from '../../../../src/plan/feedCurve.js';
import { saving } from '../../../../src/plan/saving.js';
import type { Picture } from '../picture.js';
import type { Speech } from '../speech.js';
import { axisOf, figureOf } from './figure.js';

const { item, present, proposed, saved, savedYear } = saving.output.fields;

interface Line {
  readonly item: string;
  readonly present: number;
  readonly proposed: number;
  readonly saved: number;
  readonly savedYear: number;
}

const NAMED = 3;

/** The items with the largest differences, in one enumeration. */
const named = (lines: readonly Line[]): string =>
  [...lines]
    .sort((one, other) => Math.abs(other.saved) - Math.abs(one.saved))
    .slice(0, NAMED)
    .map((one) => one.item)
    .join(', ');

function summary(items: readonly Line[], total: Line, { words, amount }: Speech): string {
  const perHl = amount(Math.abs(total.saved), saved.unit);
  const perYear = amount(Math.abs(total.savedYear), savedYear.unit);
  const [cheaper, dearer] = [items.filter((one) => one.saved > 0), items.filter((one) => one.saved < 0)];
  return [
    total.saved < 0 ? words.saving.costs(perHl, perYear) : words.saving.saves(perHl, perYear),
    ...(cheaper.length > 0 ? [words.saving.cheaper(named(cheaper))] : []),
    ...(dearer.length > 0 ? [words.saving.dearer(named(dearer))] : []),
  ].join(' ');
}

export const savingFigure = figureOf(saving, (_, answer, speech): Picture => {
  const { words, amount } = speech;
  const lines = answer as readonly Line[];
  const total = lines.at(-1) as Line;
  const items = lines.slice(0, -1).filter((one) => one.present !== 0 || one.proposed !== 0);
  const note = (one: Line) => {
    const difference = amount(Math.abs(one.savedYear), savedYear.unit);
    if (one.saved === 0) return {};
    return { note: one.saved > 0 ? words.saving.less(difference) : words.saving.more(difference) };
  };
  const perHl = (si: number) => fromSI(si, saved.unit);
  return {
    title: words.saving.title,
    summary: summary(items, total, speech),
    bars: {
      axis: { ...axisOf(feedCurve.output.fields.cost), fromZero: true },
      sets: words.saving.sets,
      lines: items.map((one) => ({
        label: one.item,
        ...note(one),
        bars: [
          { set: 0, from: 0, to: perHl(one.present) },
          { set: 1, from: 0, to: perHl(one.proposed) },
        ],
      })),
    },
    notes: [{ text: words.saving.note }],
    table: {
      columns: [{ label: item.label, unit: '' }, present, proposed, saved, savedYear],
      rows: lines.map((one) => [
        one.item,
        perHl(one.present),
        perHl(one.proposed),
        perHl(one.saved),
        fromSI(one.savedYear, savedYear.unit),
      ]),
    },
  };
});
