import { calculation } from '../core/calculation.js';
import { bodyFeed as dose, flow } from '../quantities.js';

export const bodyFeed = calculation({
  id: 'BODYFEED',
  summary: 'Powder that must go into the beer each hour.',
  question: 'How many kg of body feed does an hour take?',
  inputs: { flow, dose },
  output: { kind: 'number', label: 'Body feed rate', unit: 'kg/h' },
  method: 'flow × dose',
  sources: ['Balance of mass over the dosing point.'],
  cautions: ['dust'],
  example: { given: { flow: 250, dose: 90 }, result: 22.5 },
  compute: ({ flow, dose }) => flow * dose,
});
