import { PLAN } from '../../plan/table.js';
import { heading, type Line, note } from '../layout.js';
import { type PlanFigure, type PlanKey, planLine } from '../planLines.js';
import { nowOf, proposedOf, STATED } from '../scenario.js';
import { OWN } from './beerList.js';
import { columns } from './lines.js';

/** Present stabiliser as the oven found it, as on the sheet Dosing. */
const NOW: Readonly<Partial<Record<PlanKey, number>>> = { stabiliserMoisture: 0.64 };

/** The case’s filter is smaller than the examples’: the same one serves both plans. */
const isOfFilter = (key: PlanKey): boolean => PLAN[key].group === 'filter';

const figuresOf = (key: PlanKey): readonly PlanFigure[] => {
  const now = NOW[key] ?? nowOf(key);
  return [now, proposedOf(key) === nowOf(key) || isOfFilter(key) ? { from: `shared.${key}.0` } : proposedOf(key)];
};

export const SHARED: readonly PlanKey[] = STATED.filter((key) => !OWN.some((own) => own.key === key));

const whole = {
  'year.labels': { column: 0, rows: SHARED.length },
  'year.0': { column: 1, rows: SHARED.length },
  'year.1': { column: 2, rows: SHARED.length },
};

export const sharedLines: readonly Line[] = [
  heading('What all beers share'),
  note(
    'Labels as the plan functions read them: keep their wording, in any order. What differs from beer to beer stands in the list at the end.',
  ),
  ...SHARED.map((key, row) => {
    const line = planLine(columns, key, figuresOf(key), (side) => `shared.${key}.${side}`);
    return row === 0 ? { ...line, marks: { ...line.marks, ...whole } } : line;
  }),
];
