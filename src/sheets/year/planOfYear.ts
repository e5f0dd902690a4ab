import type { PlanLabel } from '../../core/input.js';
import { planCheck } from '../../plan/planCheck.js';
import { PLAN } from '../../plan/table.js';
import { shownUnit, text } from '../cells.js';
import { call, remarksIn } from '../formula.js';
import { type At, gap, heading, type Line, type Mark, note } from '../layout.js';
import { figureCell, type PlanKey, planFormat, planSource } from '../planLines.js';
import { nowOf, proposedOf, STATED } from '../scenario.js';
import { BEERS } from './beers.js';
import { beerColumn, chosen, columns, ofBeer, SIDES, withBeers } from './lines.js';
import { ownFigure } from './own.js';

/** Present stabiliser as the oven found it, as on the sheet Dosing. */
const NOW: Readonly<Partial<Record<PlanKey, number>>> = { stabiliserMoisture: 0.64 };

const isOwn = (key: PlanKey): boolean => ownFigure(key, 0, 0) !== undefined;

const sharedFigures = (key: PlanKey) => {
  const now = NOW[key] ?? nowOf(key);
  return [now, proposedOf(key) === nowOf(key) || isOfFilter(key) ? { from: `shared.${key}.0` } : proposedOf(key)];
};

/** The case’s filter is smaller than the examples’: the same one serves both plans. */
const isOfFilter = (key: PlanKey): boolean => PLAN[key].group === 'filter';

const wholeMarks = (side: number): Readonly<Record<string, Mark>> => ({
  ...(side === 0 ? { 'year.labels': { column: 0, rows: STATED.length } } : {}),
  [`year.${side}`]: { column: beerColumn(0), rows: STATED.length, columns: BEERS.length },
  ...Object.fromEntries(
    BEERS.map((_, beer) => [`year.${side}.${beer}`, { column: beerColumn(beer), rows: STATED.length }]),
  ),
});

const sideMarks = (key: PlanKey) =>
  Object.fromEntries(SIDES.map((_, side): [string, Mark] => [`shared.${key}.${side}`, { column: side + 1 }]));

const check = (at: At, side: number) =>
  ({ formula: `=${call(planCheck.id, [at('year.labels'), chosen(at, side)])}`, style: 'note' }) as const;

const sourceIn = (key: PlanKey, declared: PlanLabel): string =>
  isOwn(key) ? 'Each beer’s own, from the list above.' : planSource(declared, sharedFigures(key), undefined);

/** What all beers share, and where it comes from. */
const sharedLine = (key: PlanKey, row: number): Line => ({
  marks: isOwn(key) ? {} : sideMarks(key),
  judged: [{ cells: { column: 1, columns: SIDES.length }, by: { column: columns.judgement } }],
  cells: (at) => [
    text(PLAN[key].label, 'label'),
    ...(isOwn(key)
      ? SIDES.map(() => text('by beer', 'note'))
      : sharedFigures(key).map((figure) => figureCell(PLAN[key], figure, at))),
    text(shownUnit(PLAN[key].unit), 'unit'),
    ...SIDES.map((_, side) => (row === 0 ? check(at, side) : text('', 'note'))),
    text(sourceIn(key, PLAN[key]), 'note'),
  ],
});

const labelLine = (key: PlanKey): Line => ({ cells: () => [text(PLAN[key].label, 'label')] });

const planLine = (key: PlanKey, row: number, side: number): Line =>
  withBeers(
    side === 0 ? sharedLine(key, row) : labelLine(key),
    (at) =>
      BEERS.map((_, beer) => ({
        formula: `=${at(ownFigure(key, side, beer) ?? `shared.${key}.${side}`)}`,
        format: planFormat(PLAN[key]),
      })),
    row === 0 ? wholeMarks(side) : {},
  );

const remarksLine = (side: number, name: string): Line =>
  withBeers(
    { cells: () => [text('Figures that are unusual or refused', 'label')] },
    (at) =>
      BEERS.map(
        (_, beer) =>
          ({ formula: remarksIn(ofBeer(planCheck.id, at, side, beer)), style: 'note', format: '0' }) as const,
      ),
    { [name]: { column: beerColumn(0), columns: BEERS.length } },
  );

export const planLines: readonly Line[] = [
  heading('The plans now'),
  note(
    'Labels as the plan functions read them: keep their wording, in any order. Left, what all beers share; right, each beer’s plan.',
  ),
  ...STATED.map((key, row) => planLine(key, row, 0)),
  remarksLine(0, 'yearRemarks'),
  gap,
  heading('The plans proposed'),
  ...STATED.map((key, row) => planLine(key, row, 1)),
  remarksLine(1, 'yearRemarksProposed'),
  gap,
];
