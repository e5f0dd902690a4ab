import { calculation } from '../core/calculation.js';
import { haze } from '../quantities.js';

/** Upper bound of each visual grade in EBC; a bound belongs to the clearer grade. */
const GRADES = [
  [0.5, 'brilliant'],
  [1, 'almost brilliant'],
  [2, 'very slightly hazy'],
  [4, 'slightly hazy'],
  [8, 'hazy'],
] as const;

export const hazeGrade = calculation({
  id: 'HAZEGRADE',
  summary: 'What a haze reading looks like to the eye.',
  question: 'Does a drinker see this haze?',
  inputs: { haze },
  output: { kind: 'text', label: 'Grade' },
  method: `${GRADES.map(([most, grade]) => `up to ${most} EBC ${grade}`).join(', ')}, above that very hazy; a bound belongs to the clearer grade`,
  sources: [
    'National Physical Laboratory (UK), slides Haze measurements in beer: table of visual grades in EBC and ASBC units.',
  ],
  example: { given: { haze: 0.5 }, result: 'brilliant' },
  compute: ({ haze }) => GRADES.find(([most]) => haze <= most)?.[1] ?? 'very hazy',
});
