import type { PlanLabel } from '../core/input.js';
import { PLAN } from '../plan/table.js';
import { aboutCell, formatOf, inputCell, mayBeBlank, resultCell, shownUnit, sourceOf, text } from './cells.js';
import type { Columns } from './columns.js';
import type { At, Line, Mark } from './layout.js';
import { placeOf } from './place.js';
import { sourceCell } from './provenance.js';
import type { SheetCell } from './sheet.js';
import { verdictOf } from './verdict.js';

export type PlanKey = keyof typeof PLAN;
/** A figure to fill in, or the place elsewhere on the sheet that it is taken from. */
export type PlanFigure = number | { readonly from: string };
export type PlanFigures = Readonly<Partial<Record<PlanKey, readonly PlanFigure[]>>>;

/** The labels that a plan of these figures shows, in the order of the plan's table. */
export const keysOf = (figures: PlanFigures): readonly PlanKey[] =>
  (Object.keys(PLAN) as PlanKey[]).filter((key) => key in figures);

const GROUPS: Readonly<Record<string, string>> = {
  filter: 'Filter',
  powder: 'Powder',
  cake: 'Cake',
  prices: 'Prices',
  year: 'Year',
};

/** Costs of a hL run from a tenth of a cent to the value of the beer itself; of one run, a part of a hL counts. */
export function planFormat({ unit, group }: PlanLabel): string {
  if (unit === 'money/hL') return '#,##0.00##';
  return unit === 'hL' && group === 'prices' ? formatOf(unit, 1) : formatOf(unit);
}

export const figureCell = (declared: PlanLabel, figure: PlanFigure, at: At): SheetCell => ({
  ...(typeof figure === 'number' ? inputCell(declared, figure) : resultCell(`=${at(figure.from)}`, declared.unit)),
  format: planFormat(declared),
});

/** What is said of a row's figures: their group, then what is usual, or where else on the sheet they stand. */
export function planSource(declared: PlanLabel, figures: readonly PlanFigure[], from: string | undefined): string {
  const group = GROUPS[declared.group];
  const given = figures.some((figure) => typeof figure === 'number');
  return `${group}. ${given ? sourceOf(declared, from) : (from ?? 'Taken from its own row on this sheet.')}`.trim();
}

const isGiven = (figure: PlanFigure | undefined): figure is number => typeof figure === 'number';

/** One label of a plan: its figures, each of those to fill in judged beside it. `name` is that of a figure’s place. */
export function planLine(
  columns: Columns,
  key: PlanKey,
  given: readonly PlanFigure[],
  name: (index: number) => string,
  from?: string,
): Line {
  const declared: PlanLabel = PLAN[key];
  const asked = given.flatMap((figure, index) => (isGiven(figure) ? [index] : []));
  return {
    marks: Object.fromEntries(given.map((_, index): [string, Mark] => [name(index), { column: index + 1 }])),
    judged: asked.map((index) => ({ cells: { column: index + 1 }, by: { column: columns.judgement + index } })),
    cells: (at) => {
      const row = Number(/\d+/.exec(at(name(0)))?.[0]) - 1;
      const placed = (column: number) => placeOf(row, { column });
      const source = placed(columns.source);
      const judge = (figure: PlanFigure, index: number): SheetCell =>
        isGiven(figure)
          ? {
              formula: verdictOf(
                at(name(index)),
                { declared, label: declared.label, mayBeBlank: mayBeBlank(declared) },
                { figure, source },
              ),
              style: 'note',
            }
          : text('', 'note');
      const words = planSource(declared, given, from);
      return [
        text(declared.label, 'label'),
        ...given.map((figure) => figureCell(declared, figure, at)),
        text(shownUnit(declared.unit), 'unit'),
        ...given.map(judge),
        asked.length > 0 ? sourceCell : text('', 'note'),
        asked.length > 0
          ? aboutCell(
              asked.map((index) => placed(columns.judgement + index)),
              words,
            )
          : text(words, 'note'),
      ];
    },
  };
}

/**
 * A plan as the plan functions read it: labels, and one column of values for each of the sheet's figures.
 * `name.labels` and `name.0`, `name.1` … mark its columns, `name.key.0` … its figures.
 */
export function planLines(
  columns: Columns,
  name: string,
  figures: PlanFigures,
  sources: Readonly<Partial<Record<PlanKey, string>>> = {},
): readonly Line[] {
  const keys = keysOf(figures);
  const whole = columns.figures.map((_, index): [string, Mark] => [
    `${name}.${index}`,
    { column: index + 1, rows: keys.length },
  ]);
  const all = Object.fromEntries([[`${name}.labels`, { column: 0, rows: keys.length }], ...whole]);
  return keys.map((key, row) => {
    const one = planLine(
      columns,
      key,
      figures[key] as readonly PlanFigure[],
      (index) => `${name}.${key}.${index}`,
      sources[key],
    );
    return row === 0 ? { ...one, marks: { ...one.marks, ...all } } : one;
  });
}
