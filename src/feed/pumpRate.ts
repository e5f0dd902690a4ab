import { calculation } from '../core/calculation.js';
import { bodyFeed as dose, flow, slurryStrength } from '../quantities.js';

export const pumpRate = calculation({
  id: 'PUMPRATE',
  summary: 'Dosing pump setting for a dose.',
  question: 'To how many L/h do I set the dosing pump?',
  inputs: { flow, dose, strength: slurryStrength },
  output: { kind: 'number', label: 'Pump rate', unit: 'L/h' },
  method: 'flow × dose / slurry strength',
  sources: ['Balance of mass over the dosing point.'],
  cautions: ['dust'],
  example: { given: { flow: 250, dose: 90, strength: 150 }, result: 150 },
  compute: ({ flow, dose, strength }) => (flow * dose) / strength,
});
