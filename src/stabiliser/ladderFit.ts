import { calculation } from '../core/calculation.js';
import { fitLadder, LADDER_SOURCES, ladder, repeatedDose } from './ladder.js';

export const ladderFit = calculation({
  id: 'LADDERFIT',
  summary: 'Curve through a dose ladder: haze without dose, plateau, and how fast the haze falls.',
  question: 'What does a dose ladder say about this stabiliser in this beer?',
  inputs: ladder,
  output: {
    kind: 'report',
    fields: {
      start: { label: 'Haze without dose', unit: 'EBC', error: true },
      plateau: { label: 'Plateau', unit: 'EBC', error: true },
      rate: { label: 'Rate', unit: 'per g/hL', error: true },
      residual: { label: 'Residual', unit: 'EBC' },
      rSquared: { label: 'R²', unit: '' },
      largest: { label: 'Largest dose tried', unit: 'g/hL' },
    },
  },
  method:
    'haze = plateau + (haze without dose − plateau) × e^(−rate × dose), fitted to the hazes by least squares with standard errors; residual: standard deviation about the curve. No answer where the hazes do not fall beyond chance (5 % level), or where the standard error of the plateau exceeds the whole fall seen. Beyond the largest dose tried the curve is a guess',
  sources: LADDER_SOURCES,
  cautions: ['dust'],
  example: {
    given: { doses: [0, 20, 40, 60], hazes: [9, 5, 3, 2] },
    result: { start: 9, plateau: 1, rate: 0.034_657_359_027_997_26, rSquared: 1, largest: 60 },
  },
  refuse: repeatedDose,
  compute: (given) => {
    const fitted = fitLadder(given);
    if ('none' in fitted) return fitted;
    return {
      start: { value: fitted.start, error: fitted.startError },
      plateau: { value: fitted.plateau, error: fitted.plateauError },
      rate: { value: fitted.rate, error: fitted.rateError },
      residual: fitted.deviation,
      rSquared: fitted.rSquared,
      largest: Math.max(...given.doses),
    };
  },
});
