import type { PlanLabel } from '../../core/input.js';
import { bestFeed } from '../../plan/bestFeed.js';
import { COST_GROUPS } from '../../plan/input.js';
import { PLAN } from '../../plan/table.js';
import { call } from '../formula.js';
import { gap, heading, type Line, note } from '../layout.js';
import { type PlanFigure, type PlanFigures, type PlanKey, planLines } from '../planLines.js';
import { reportLines } from '../reports.js';
import { nowOf, proposedOf, STATED } from '../scenario.js';
import { columns } from './lines.js';

/** Labels whose figures stand further up, for the old powder and the new. */
const ABOVE: Readonly<Partial<Record<PlanKey, readonly [string, string]>>> = {
  area: ['trialArea', 'trialArea'],
  flow: ['oldFlow', 'newFlow'],
  viscosity: ['oldViscosity', 'newViscosity'],
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

const plan: PlanFigures = Object.fromEntries(STATED.filter(costs).map((key) => [key, figuresOf(key)]));

export const bestFeedLines: readonly Line[] = [
  heading('Plan with the fitted figures'),
  note('Labels as the plan functions read them: keep their wording, in any order.'),
  ...planLines(columns, 'plan', plan),
  gap,
  heading('Body feed of least cost'),
  ...reportLines(columns, 'best', bestFeed, (at) =>
    [0, 1].map((column) => call(bestFeed.id, [at('plan.labels'), at(`plan.${column}`)])),
  ),
  gap,
];
