import type { PlanLabel } from '../../core/input.js';
import { planCheck } from '../../plan/planCheck.js';
import { PLAN } from '../../plan/table.js';
import { shownUnit, text } from '../cells.js';
import { call, remarksIn } from '../formula.js';
import { type At, gap, heading, type Line, type Mark, note, titles } from '../layout.js';
import { figureCell, type PlanKey, planFormat, planSource } from '../planLines.js';
import { nowOf, proposedOf, STATED } from '../scenario.js';
import { BEERS } from './beers.js';
import { beerColumn, beerTitles, chosen, columns, ofBeer, SIDES, SOURCE, withBeers } from './lines.js';
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

const wholeMarks: Readonly<Record<string, Mark>> = {
  'year.labels': { column: 0, rows: STATED.length },
  ...Object.fromEntries(
    SIDES.flatMap((_, side) => [
      [`year.${side}`, { column: beerColumn(side, 0), rows: STATED.length, columns: BEERS.length }],
      ...BEERS.map((__, beer) => [`year.${side}.${beer}`, { column: beerColumn(side, beer), rows: STATED.length }]),
    ]),
  ),
};

const sideMarks = (key: PlanKey) =>
  Object.fromEntries(SIDES.map((_, side): [string, Mark] => [`shared.${key}.${side}`, { column: side + 1 }]));

const check = (at: At, side: number) =>
  ({ formula: `=${call(planCheck.id, [at('year.labels'), chosen(at, side)])}`, style: 'note' }) as const;

const sourceIn = (key: PlanKey, declared: PlanLabel): string =>
  isOwn(key) ? 'Each beer’s own, from the list above.' : planSource(declared, sharedFigures(key), undefined);

function planLine(key: PlanKey, row: number): Line {
  const declared: PlanLabel = PLAN[key];
  const line: Line = {
    marks: isOwn(key) ? {} : sideMarks(key),
    cells: (at) => [
      text(declared.label, 'label'),
      ...(isOwn(key)
        ? SIDES.map(() => text('', 'note'))
        : sharedFigures(key).map((figure) => figureCell(declared, figure, at))),
      text(shownUnit(declared.unit), 'unit'),
      ...SIDES.map((_, side) => (row === 0 ? check(at, side) : text('', 'note'))),
      text(sourceIn(key, declared), 'note'),
    ],
  };
  const beers = (at: At) =>
    SIDES.flatMap((_, side) =>
      BEERS.map((__, beer) => ({
        formula: `=${at(ownFigure(key, side, beer) ?? `shared.${key}.${side}`)}`,
        format: planFormat(declared),
      })),
    );
  return withBeers(line, beers, row === 0 ? wholeMarks : {});
}

/** Titles over figures and beers alike; the source stands right of the beers. */
export const wideTitles = (lead: readonly string[], source: string): Line =>
  titles([
    ...Array.from({ length: columns.source }, (_, column) => lead[column] ?? ''),
    ...Array.from({ length: SOURCE - columns.source }, (_, index) => beerTitles[index] ?? ''),
    source,
  ]);

export const planLines: readonly Line[] = [
  heading('The plans'),
  note(
    'Labels as the plan functions read them: keep their wording, in any order. Each beer’s plan stands to the right.',
  ),
  wideTitles(
    ['Quantity', 'All beers now', 'All beers proposed', 'Unit', 'Judgement: now', 'Judgement: proposed'],
    'Where the figure comes from',
  ),
  ...STATED.map(planLine),
  withBeers(
    { cells: () => [text('Figures that are unusual or refused', 'label')] },
    (at) =>
      SIDES.flatMap((_, side) =>
        BEERS.map(
          (__, beer) =>
            ({ formula: remarksIn(ofBeer(planCheck.id, at, side, beer)), style: 'note', format: '0' }) as const,
        ),
      ),
    { yearRemarks: { column: beerColumn(0, 0), columns: 2 * BEERS.length } },
  ),
  gap,
];
