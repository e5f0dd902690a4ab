import { calculation } from '../core/calculation.js';
import { errorFields, timesOf } from '../errors/errorFields.js';
import { estimate } from '../errors/estimate.js';
import type { Decay } from '../numerics/decay.js';
import { fitLadder, LADDER_SOURCES, ladder, repeatedDose, target } from './ladder.js';

interface Dosed {
  readonly dose: number | undefined;
  readonly least: number | undefined;
  readonly most: number | undefined;
  readonly remark: string;
}

const NO_DOSE = { dose: undefined, least: undefined, most: undefined } as const;

/** The dose that reaches a target, and between which doses it lies. */
function doseFor(fitted: Decay, target: number | undefined, largest: number): Dosed {
  if (target === undefined) return { ...NO_DOSE, remark: 'none' };
  if (target >= fitted.start) return { ...NO_DOSE, dose: 0, remark: 'The haze without dose already meets the target.' };
  if (target <= fitted.plateau) return { ...NO_DOSE, remark: 'No dose reaches the target: it lies below the plateau.' };
  const dose = fitted.reaches(target);
  const reach = fitted.reachesWithin(target)?.reach;
  const beyond = dose + (reach ?? 0) > largest;
  return {
    dose: Math.max(0, dose),
    least: reach && Math.max(0, dose - reach),
    most: reach && dose + reach,
    remark: beyond ? 'The dose may lie beyond the largest that was tried, where the curve is a guess.' : 'none',
  };
}

export const ladderFit = calculation({
  id: 'LADDERFIT',
  summary: 'Curve through a dose ladder: haze without dose, plateau, and how fast the haze falls.',
  question: 'What does a dose ladder say about this stabiliser in this beer?',
  inputs: {
    ...ladder,
    target: { ...target, optional: true, help: 'Haze to reach: adds its dose, and between which doses it lies.' },
  },
  output: {
    kind: 'report',
    fields: {
      start: { label: 'Haze without dose', unit: 'EBC', error: true },
      plateau: { label: 'Plateau', unit: 'EBC', error: true },
      rate: { label: 'Rate', unit: 'per g/hL', error: true },
      residual: { label: 'Residual', unit: 'EBC' },
      rSquared: { label: 'R²', unit: '' },
      largest: { label: 'Largest dose tried', unit: 'g/hL' },
      times: errorFields.times,
      dose: { label: 'Dose for the target', unit: 'g/hL' },
      least: { label: 'Dose for the target, 95 % from', unit: 'g/hL' },
      most: { label: 'Dose for the target, 95 % to', unit: 'g/hL' },
      remark: { label: 'Remark', text: true },
    },
  },
  method:
    'haze = plateau + (haze without dose − plateau) × e^(−rate × dose), fitted to the hazes by least squares. Standard errors hold whether hazes scatter alike or in proportion to themselves, each weighed by its restricted likelihood; the truth lies within Standard errors in 95 % times them (Student’s t); residual: standard deviation about the curve. No answer where the hazes do not fall beyond chance (5 % level), or where the standard error of the plateau exceeds the whole fall seen. Beyond the largest dose tried the curve is a guess',
  sources: LADDER_SOURCES,
  cautions: ['dust'],
  example: {
    given: { doses: [0, 20, 40, 60], hazes: [9, 5, 3, 2] },
    result: { start: 9, plateau: 1, rate: 0.034_657_359_027_997_26, rSquared: 1, largest: 60 },
  },
  refuse: repeatedDose,
  compute: ({ target, ...given }) => {
    const fitted = fitLadder(given);
    if ('none' in fitted) return fitted;
    const { start, plateau, rate } = fitted.sure;
    return {
      start: estimate(fitted.start, start),
      plateau: estimate(fitted.plateau, plateau),
      rate: estimate(fitted.rate, rate),
      residual: fitted.deviation,
      rSquared: fitted.rSquared,
      largest: Math.max(...given.doses),
      times: timesOf([start, plateau, rate]),
      ...doseFor(fitted, target, Math.max(...given.doses)),
    };
  },
});
