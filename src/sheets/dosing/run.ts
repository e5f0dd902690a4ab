import type { PlanLabel } from '../../core/input.js';
import { RUN_GROUPS } from '../../plan/input.js';
import { runCurve } from '../../plan/runCurve.js';
import { runReport } from '../../plan/runReport.js';
import { PLAN } from '../../plan/table.js';
import { call } from '../formula.js';
import { type At, gap, heading, type Line, markedFirst, note } from '../layout.js';
import { type PlanFigure, type PlanFigures, type PlanKey, planLines } from '../planLines.js';
import { reportLines, tableLines } from '../reports.js';
import { nowOf, proposedOf, STATED } from '../scenario.js';
import { columns } from './lines.js';

const POINTS = 11;

/** Labels whose figures stand further up on the sheet, now and proposed. */
const ABOVE: Readonly<Partial<Record<PlanKey, readonly [string, string]>>> = {
  area: ['area', 'area'],
  flow: ['flow', 'flow'],
  precoatLoad: ['load', 'load'],
  bodyFeed: ['feed', 'proposedFeed'],
  stabiliserDose: ['presentDose', 'newDose'],
  stabiliserMoisture: ['presentMoisture', 'newMoisture'],
};

/** What the swap itself changes; everything else is the same after it. */
const CHANGED: readonly PlanKey[] = ['stabiliserPermeability'];

const FITTED = 'As fitted on the sheet Trial log, rounded.';

function figuresOf(key: PlanKey): readonly PlanFigure[] {
  const above = ABOVE[key];
  if (above) return above.map((from) => ({ from }));
  return [nowOf(key), CHANGED.includes(key) ? proposedOf(key) : { from: `plan.${key}.0` }];
}

const inRun = (key: PlanKey): boolean => {
  const { group }: PlanLabel = PLAN[key];
  return (RUN_GROUPS as readonly string[]).includes(group);
};

const plan: PlanFigures = Object.fromEntries(STATED.filter(inRun).map((key) => [key, figuresOf(key)]));

const planOf = (at: At, column: number): string[] => [at('plan.labels'), at(`plan.${column}`)];

export const CURVES = ['curve', 'newCurve'] as const;

/** Beside both curves, which take a header, their points, a gap and a heading each. */
const PICTURE = { column: 4, columns: 3, rows: POINTS + 4 };

const curve = (name: string, column: number): readonly Line[] =>
  tableLines(name, runCurve, POINTS, (at) => call(runCurve.id, [...planOf(at, column), String(POINTS)]));

export const runLines: readonly Line[] = [
  heading('Plan of the run'),
  note('Labels as the plan functions read them: keep their wording, in any order.'),
  ...planLines(columns, 'plan', plan, {
    aidPermeability: FITTED,
    beerSolidsPermeability: FITTED,
    stabiliserPermeability: FITTED,
  }),
  gap,
  heading('Predicted run'),
  ...reportLines(columns, 'run', runReport, (at) => [0, 1].map((column) => call(runReport.id, planOf(at, column)))),
  gap,
  heading('Pressure curve now'),
  ...markedFirst(curve(CURVES[0], 0), { 'curve.picture': PICTURE }),
  gap,
  heading('Pressure curve proposed'),
  ...curve(CURVES[1], 1),
];
