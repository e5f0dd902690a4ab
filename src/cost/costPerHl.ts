import { calculation } from '../core/calculation.js';
import { dose, price } from '../quantities.js';

export const costPerHl = calculation({
  id: 'COSTPERHL',
  summary: 'Cost of a powder for each hL of beer.',
  question: 'What does this powder cost per hL?',
  inputs: { dose, price },
  output: { kind: 'number', label: 'Cost', unit: 'money/hL' },
  method: 'dose × price',
  sources: ['Definition: mass used times price.'],
  example: { given: { dose: 60, price: 2.5 }, result: 0.15 },
  compute: ({ dose, price }) => dose * price,
});
