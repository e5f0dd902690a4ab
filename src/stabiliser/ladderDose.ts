import { calculation } from '../core/calculation.js';
import { fromSI, toSI } from '../core/units.js';
import { plainNumber } from '../core/wording.js';
import { dose, haze } from '../quantities.js';
import { fitLadder, LADDER_SOURCES, ladder, repeatedDose } from './ladder.js';

const rounded = (value: number): string => plainNumber(Number(value.toPrecision(3)));
const shownHaze = (si: number): string => `${rounded(fromSI(si, haze.unit))} ${haze.unit}`;

export const ladderDose = calculation({
  id: 'LADDERDOSE',
  summary: 'Dose that brings the haze down to a target, from a dose ladder.',
  question: 'How much of this stabiliser does this beer need?',
  inputs: {
    ...ladder,
    target: { ...haze, label: 'Target', limit: [0.001, 1000], help: 'Haze to reach, by the method of the ladder.' },
  },
  output: { kind: 'number', label: 'Dose', unit: 'g/hL' },
  method:
    'the curve of LADDERFIT solved for the target: ln((haze without dose − plateau) / (target − plateau)) / rate; 0 where the haze without dose already meets it. Compare with the largest dose tried in LADDERFIT: beyond it the answer is a guess',
  sources: LADDER_SOURCES,
  cautions: ['dust'],
  example: { given: { doses: [0, 20, 40, 60], hazes: [9, 5, 3, 2], target: 2 }, result: 60 },
  refuse: repeatedDose,
  compute: ({ target, ...given }) => {
    const fitted = fitLadder(given);
    if ('none' in fitted) return fitted;
    if (target >= fitted.start) return 0;
    if (target <= fitted.plateau) {
      return {
        none: `No dose reaches ${shownHaze(target)}: the plateau of the fitted curve is ${shownHaze(fitted.plateau)}.`,
      };
    }
    const needed = fitted.reaches(target);
    const most = toSI(dose.limit[1], dose.unit);
    if (needed <= most) return Math.max(0, needed);
    return {
      none: `No dose up to ${plainNumber(dose.limit[1])} ${dose.unit} reaches ${shownHaze(target)}: it lies too near the plateau of the fitted curve.`,
    };
  },
});
