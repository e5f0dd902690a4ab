import { extent } from '../../../src/numerics/extent.js';
import type { CellContent } from '../../host/cell.js';
import type { ShownChart } from '../../host/shownChart.js';
import { setOf } from '../../host/strokes.js';
import type { Texts } from '../../texts/texts.js';
import type { Formats } from '../formats.js';
import type { BarLine, Mark, Picture, Point } from './picture.js';

type Series = ShownChart['series'][number];

interface Pair {
  readonly across: CellContent;
  readonly upwards: number;
}

const named = (cell: CellContent | undefined): boolean => cell !== undefined && cell !== null && cell !== '';

/** What can be drawn of a series: a blank or refused cell leaves its point out. */
const pairsOf = ({ across, upwards }: Series): readonly Pair[] =>
  upwards.flatMap((value, index) => {
    const beside = across[index] ?? null;
    return typeof value === 'number' && named(beside) ? [{ across: beside, upwards: value }] : [];
  });

const pointsOf = (series: Series): readonly Point[] =>
  pairsOf(series).flatMap(({ across, upwards }) => (typeof across === 'number' ? [{ x: across, y: upwards }] : []));

function drawnOf({ kind, series, across, upwards }: ShownChart) {
  const kinds = series.map((one) => ((one.kind ?? kind) === 'lines' ? ('curve' as const) : ('dots' as const)));
  return {
    x: { label: across.title, unit: '' as const },
    panels: [
      {
        y: { label: upwards.title, unit: '' as const, ...(kind === 'lines' ? {} : { fromZero: true as const }) },
        height: 1,
        marks: series.flatMap((one, index): Mark[] => {
          const points = pointsOf(one);
          return points.length > 0 ? [{ kind: kinds[index] ?? 'dots', points, set: setOf(series, index) }] : [];
        }),
      },
    ],
    legend:
      series.length > 1
        ? series.map(({ name }, index) => ({ text: name, kind: kinds[index] ?? 'dots', set: setOf(series, index) }))
        : [],
  } as const;
}

function barsOf({ series, upwards }: ShownChart) {
  // One set alone is filled, as the eye expects of bars.
  const alone = series.length === 1;
  const lines = Array.from({ length: Math.max(...series.map(({ across }) => across.length)) }, (_, row): BarLine => {
    const bars = series.flatMap((one, index) => {
      const to = one.upwards[row];
      return typeof to === 'number' && named(one.across[row])
        ? [{ set: alone ? 1 : setOf(series, index), from: 0, to } as const]
        : [];
    });
    return { label: String(series.map(({ across }) => across[row]).find(named) ?? ''), bars };
  }).filter(({ bars }) => bars.length > 0);
  const sets = alone ? [] : series.map(({ name }) => name);
  return { bars: { axis: { label: upwards.title, unit: '' as const, fromZero: true as const }, sets, lines } } as const;
}

/** A chart of a sheet as the pane draws pictures; nothing where its cells hold no figures. */
export function sheetPicture(chart: ShownChart, words: Texts['charts'], formats: Formats): Picture | undefined {
  const filled = chart.series.map((one) => ({ one, pairs: pairsOf(one) })).filter(({ pairs }) => pairs.length > 0);
  if (filled.length === 0) return undefined;
  const number = (value: number) => formats.number(Number(value.toPrecision(4)), '');
  return {
    title: chart.title,
    summary: filled
      .map(({ one, pairs }) => {
        const { least, most } = extent(pairs.map(({ upwards }) => upwards));
        if (pairs.length === 1) return words.one(one.name, number(least));
        return words.reach(one.name, number(least), number(most), formats.count(pairs.length));
      })
      .join(' '),
    notes: [],
    table: {
      columns: [words.series, chart.across.title, chart.upwards.title].map((label) => ({ label, unit: '' })),
      rows: filled.flatMap(({ one, pairs }) =>
        pairs.map(({ across, upwards }) => [one.name, typeof across === 'number' ? across : String(across), upwards]),
      ),
    },
    ...(chart.kind === 'bars' ? barsOf(chart) : drawnOf(chart)),
  };
}
