import { calculation } from '../core/calculation.js';
import { fromSI, toSI } from '../core/units.js';
import { plainNumber } from '../core/wording.js';
import { dose, haze } from '../quantities.js';
import { fitLadder, LADDER_SOURCES, ladder, repeatedDose, target } from './ladder.js';

const rounded = (value: number): string => plainNumber(Number(value.toPrecision(3)));
const shownHaze = (si: number): string => `${rounded(fromSI(si, haze.unit))} ${haze.unit}`;

export const ladderDose = calculation({
  id: 'LADDERDOSE',
  summary: 'Dose that brings the haze down to a target, from a dose ladder.',
  question: 'How much of this stabiliser does this beer need?',
  inputs: {
    ...ladder,
    target,
    certainty: {
      kind: 'number',
      label: 'Certainty',
      unit: 'fraction',
      limit: [0.5, 0.99],
      usual: [0.5, 0.95],
      preset: 0.5,
      help: 'Chance that the dose is enough: 50 % is the best guess, 90 % stays on the safe side by as much as the ladder is unsure.',
      source: 'Limits: half is the best guess itself; beyond 99 % a few doses tell nothing.',
    },
  },
  output: { kind: 'number', label: 'Dose', unit: 'g/hL' },
  method:
    'the curve of LADDERFIT solved for the target: ln((haze without dose − plateau) / (target − plateau)) / rate; 0 where the haze without dose already meets it. Certainty above 50 % adds what its error reaches to that side, by the same Student’s t. LADDERFIT states the error. Compare with the largest dose tried in LADDERFIT: beyond it the answer is a guess',
  sources: LADDER_SOURCES,
  cautions: ['dust'],
  example: { given: { doses: [0, 20, 40, 60], hazes: [9, 5, 3, 2], target: 2 }, result: 60 },
  refuse: repeatedDose,
  compute: ({ target, certainty, ...given }) => {
    const fitted = fitLadder(given);
    if ('none' in fitted) return fitted;
    if (target >= fitted.start) return 0;
    if (target <= fitted.plateau) {
      return {
        none: `No dose reaches ${shownHaze(target)}: the plateau of the fitted curve is ${shownHaze(fitted.plateau)}.`,
      };
    }
    const unsure = certainty > 0.5 ? fitted.reachesWithin(target, 2 * certainty - 1)?.reach : 0;
    const needed = fitted.reaches(target) + (unsure ?? 0);
    const most = toSI(dose.limit[1], dose.unit);
    if (needed <= most) return Math.max(0, needed);
    return {
      none: `No dose up to ${plainNumber(dose.limit[1])} ${dose.unit} reaches ${shownHaze(target)}: it lies too near the plateau of the fitted curve.`,
    };
  },
});
