import { calculation } from '../core/calculation.js';
import { volume } from '../quantities.js';
import { yearVolume } from './inputs.js';

export const runsPerYear = calculation({
  id: 'RUNSPERYEAR',
  summary: 'Filter runs that a year’s beer takes.',
  question: 'How many runs does a year take?',
  inputs: {
    volume: { ...yearVolume, limit: [0, yearVolume.limit[1]] },
    run: volume,
  },
  output: { kind: 'number', label: 'Runs per year', unit: '' },
  method: 'year volume / run volume, not rounded: a run begun in December ends in January',
  sources: ['Arithmetic.'],
  example: { given: { volume: 500_000, run: 2000 }, result: 250 },
  compute: ({ volume, run }) => volume / run,
});
