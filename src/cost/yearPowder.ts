import { calculation } from '../core/calculation.js';
import { dose } from '../quantities.js';
import { yearVolume } from './inputs.js';

export const yearPowder = calculation({
  id: 'YEARPOWDER',
  summary: 'Powder that a year’s beer takes.',
  question: 'How much powder must I buy in a year?',
  inputs: {
    volume: { ...yearVolume, limit: [0, yearVolume.limit[1]] },
    dose: { ...dose, help: 'Powder as bought for each hL, its share of the precoat included (POWDERPERHL).' },
  },
  output: { kind: 'number', label: 'Powder per year', unit: 't' },
  method: 'year volume × dose',
  sources: ['Balance of mass over a year.'],
  cautions: ['dust'],
  example: { given: { volume: 500_000, dose: 110 }, result: 55 },
  compute: ({ volume, dose }) => volume * dose,
});
