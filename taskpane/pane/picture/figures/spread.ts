import { fromSI } from '../../../../src/core/units.js';
import { extent } from '../../../../src/numerics/extent.js';
import { sampleSavings } from '../../../../src/plan/sampleSavings.js';
import { savingSpread } from '../../../../src/plan/savingSpread.js';
import type { Mark, Picture } from '../picture.js';
import { figureOf } from './figure.js';

const COLUMNS = 24;
/** More samples than this do not change the picture, and would hold up the pane. */
const MOST_SAMPLES = 100_000;

const { p50, chance } = savingSpread.output.fields;

interface Column {
  readonly from: number;
  readonly to: number;
  /** Share of the samples. */
  readonly height: number;
}

/** How the values are spread, over columns of one width. */
export function columnsOf(values: ArrayLike<number>, count = COLUMNS): readonly Column[] {
  const { least, most, span } = extent(values);
  if (!(span > 0)) return [{ from: least, to: most, height: 1 }];
  const counts = new Array<number>(count).fill(0);
  for (let i = 0; i < values.length; i++) {
    const place = Math.min(count - 1, Math.floor((((values[i] as number) - least) / span) * count));
    counts[place] = (counts[place] as number) + 1;
  }
  const edge = (index: number) => (index === count ? most : least + (span * index) / count);
  return counts.map((one, index) => ({ from: edge(index), to: edge(index + 1), height: one / values.length }));
}

export const spreadFigure = figureOf(savingSpread, ({ labels, samples, seed }, answer, speech): Picture => {
  const { words, amount, count } = speech;
  const present = { low: labels.presentLow, high: labels.presentHigh };
  const proposed = { low: labels.proposedLow, high: labels.proposedHigh };
  const drawn = Math.min(samples, MOST_SAMPLES);
  const { savings } = sampleSavings(present, proposed, drawn, seed);
  const columns = columnsOf(savings);
  const money = (si: number | undefined) => amount(si ?? 0, p50.unit);
  const upright = (name: string, si: number | undefined): Mark => ({
    kind: 'upright',
    at: fromSI(si ?? 0, p50.unit),
    text: words.spread.mark(name, money(si)),
    end: 'head',
  });
  const { least, most } = extent(savings);
  const missing = answer.withoutRun ?? 0;
  return {
    title: words.spread.title,
    summary: [
      words.spread.summary(money(answer.p10), money(answer.p50), money(answer.p90)),
      words.spread.chance(amount(answer.chance.value, chance.unit), amount(answer.chance.error ?? 0, chance.unit)),
      ...(missing > 0 ? [words.spread.missing(count(missing), count(samples))] : []),
    ].join(' '),
    x: { label: words.spread.saving, unit: p50.unit },
    panels: [
      {
        y: { label: words.spread.share, unit: 'fraction', fromZero: true, headroom: true },
        height: 1,
        marks: [
          { kind: 'columns', columns },
          ...(least < 0 && most > 0 ? [{ kind: 'upright', at: 0, text: '', end: 'head', plain: true } as const] : []),
          upright('P10', answer.p10),
          upright('P50', answer.p50),
          upright('P90', answer.p90),
        ],
      },
    ],
    notes: [
      { text: words.spread.note },
      ...(drawn < samples ? [{ text: words.spread.some(count(drawn), count(samples)) }] : []),
    ],
    table: {
      columns: [
        { label: words.spread.from, unit: p50.unit },
        { label: words.spread.to, unit: p50.unit },
        { label: words.spread.share, unit: 'fraction' },
      ],
      rows: columns.map(({ from, to, height }) => [from, to, height]),
    },
  };
});
