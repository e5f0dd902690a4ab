import type { PlanLabel } from '../../core/input.js';
import { bestFeed } from '../../plan/bestFeed.js';
import { feedCurve } from '../../plan/feedCurve.js';
import { COST_GROUPS } from '../../plan/input.js';
import { PLAN } from '../../plan/table.js';
import { formatOf } from '../cells.js';
import { call, columnOf } from '../formula.js';
import { type At, gap, heading, type Line, note } from '../layout.js';
import { type PlanFigure, type PlanFigures, type PlanKey, planLines } from '../planLines.js';
import { reportLines, tableLines } from '../reports.js';
import { nowOf, proposedOf, STATED } from '../scenario.js';
import { columns } from './lines.js';

/** Labels whose figures stand further up, for the old powder and the new. */
const ABOVE: Readonly<Partial<Record<PlanKey, readonly [string, string]>>> = {
  area: ['trialArea', 'trialArea'],
  flow: ['oldFlow', 'newFlow'],
  viscosity: ['oldViscosity', 'newViscosity'],
  septumRadius: ['trialRadius', 'trialRadius'],
  precoatLoad: ['trialPrecoat', 'trialPrecoat'],
  startPressure: ['fit.start.0', 'fit.start.1'],
  bodyFeed: ['oldFeed', 'newFeed'],
  aidMoisture: ['trialAidMoisture', 'trialAidMoisture'],
  stabiliserDose: ['oldStabiliser', 'newStabiliser'],
  stabiliserMoisture: ['oldStabiliserMoisture', 'newStabiliserMoisture'],
  beerSolids: ['oldBeerSolids', 'newBeerSolids'],
  cakeDensity: ['trialDensity', 'trialDensity'],
  aidPermeability: ['oldFittedAid', 'newFittedAid'],
  beerSolidsPermeability: ['oldFittedBeer', 'newFittedBeer'],
  stabiliserPermeability: ['oldPart', 'newPart'],
  leastFeed: ['trialLeastFeed', 'trialLeastFeed'],
};

const figuresOf = (key: PlanKey): readonly PlanFigure[] => {
  const above = ABOVE[key];
  if (above) return above.map((from) => ({ from }));
  return [nowOf(key), nowOf(key) === proposedOf(key) || key in ABOVE ? { from: `plan.${key}.0` } : proposedOf(key)];
};

const costs = (key: PlanKey): boolean => {
  const { group }: PlanLabel = PLAN[key];
  return (COST_GROUPS as readonly string[]).includes(group);
};

const plan: PlanFigures = Object.fromEntries(
  [...STATED.filter(costs), 'leastFeed' as const].map((key) => [key, figuresOf(key)]),
);

const SPAN = [bestFeed.inputs.least.preset, bestFeed.inputs.most.preset].map(String);

/** The feeds that were run. */
const tried = (at: At): readonly string[] => ['MIN', 'MAX'].map((end) => `${end}(${at('trials.feed')})`);

const POINTS = 21;
const PICTURE = { column: 6, columns: 2, rows: 14 };

const curveOf = (at: At, column: number): string =>
  call(feedCurve.id, [...[at('plan.labels'), at(`plan.${column}`)], ...[...SPAN, `${POINTS}`]]);

const COST = Object.keys(feedCurve.output.fields).indexOf('cost') + 1;

/** The curve of the old powder, and beside it the cost with the new one. */
const curveLines: readonly Line[] = tableLines('feedCurve', feedCurve, POINTS, (at) => curveOf(at, 0)).map(
  (one, row) => ({
    marks: {
      ...one.marks,
      ...(row === 0 ? { newFeedCost: { column: COST, rows: POINTS + 1 }, 'best.picture': PICTURE } : {}),
    },
    cells: (at) => [
      ...one.cells(at),
      {
        style: row === 0 ? ('heading' as const) : ('result' as const),
        format: formatOf(feedCurve.output.fields.cost.unit),
        ...(row === 0 ? { formula: `=${columnOf(curveOf(at, 1), COST)}` } : {}),
      },
    ],
  }),
);

export const bestFeedLines: readonly Line[] = [
  heading('Plan with the fitted figures'),
  note('Labels as the plan functions read them: keep their wording, in any order.'),
  ...planLines(columns, 'plan', plan),
  gap,
  heading('Body feed of least cost'),
  ...reportLines(columns, 'best', bestFeed, (at) =>
    [0, 1].map((column) => call(bestFeed.id, [at('plan.labels'), at(`plan.${column}`), ...SPAN, ...tried(at)])),
  ),
  gap,
  heading('Cost over the body feed: old powder, and the cost with the new one in the last column'),
  ...curveLines,
  gap,
];
