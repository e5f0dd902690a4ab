import type { PlanLabel } from '../core/input.js';
import { PLAN } from '../plan/table.js';
import { formatOf, inputCell, resultCell, shownUnit, sourceOf, text } from './cells.js';
import type { Columns } from './columns.js';
import { call } from './formula.js';
import type { At, Line, Mark } from './layout.js';
import type { SheetCell } from './sheet.js';

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

/** Costs of a hL run from a tenth of a cent to the value of the beer itself. */
export const planFormat = ({ unit }: PlanLabel): string => (unit === 'money/hL' ? '#,##0.00##' : formatOf(unit));

export const figureCell = (declared: PlanLabel, figure: PlanFigure, at: At): SheetCell => ({
  ...(typeof figure === 'number' ? inputCell(declared, figure) : resultCell(`=${at(figure.from)}`, declared.unit)),
  format: planFormat(declared),
});

/** Where a row's figures come from: its group, then whose figure it is and what is usual. */
export function planSource(declared: PlanLabel, figures: readonly PlanFigure[], from: string | undefined): string {
  const group = GROUPS[declared.group];
  const given = figures.some((figure) => typeof figure === 'number');
  return `${group}. ${given ? sourceOf(declared, from) : (from ?? 'Taken from its own row on this sheet.')}`;
}

/**
 * A plan as the plan functions read it: labels, one column of values for each of the sheet's figures, and a
 * judgement of each. `name.labels` and `name.0`, `name.1` … mark its columns, `name.key.0` … its figures.
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
    const declared: PlanLabel = PLAN[key];
    const given = figures[key] as readonly PlanFigure[];
    const own = columns.figures.map((_, index): [string, Mark] => [`${name}.${key}.${index}`, { column: index + 1 }]);
    return {
      marks: { ...Object.fromEntries(own), ...(row === 0 ? all : {}) },
      judged: [{ cells: { column: 1, columns: columns.figures.length }, by: { column: columns.judgement } }],
      cells: (at) => [
        text(declared.label, 'label'),
        ...given.map((figure) => figureCell(declared, figure, at)),
        text(shownUnit(declared.unit), 'unit'),
        ...columns.figures.map((_, index) => judgement(at, name, index, row)),
        text(planSource(declared, given, sources[key]), 'note'),
      ],
    };
  });
}

const judgement = (at: At, name: string, index: number, row: number) =>
  row === 0
    ? ({ formula: `=${call('PLANCHECK', [at(`${name}.labels`), at(`${name}.${index}`)])}`, style: 'note' } as const)
    : text('', 'note');
