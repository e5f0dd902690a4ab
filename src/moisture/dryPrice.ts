import { calculation } from '../core/calculation.js';
import { moisture, price } from '../quantities.js';

export const dryPrice = calculation({
  id: 'DRYPRICE',
  summary: 'What a powder costs per kg of its dry solids.',
  question: 'Which of two quotes is cheaper once the water is taken out?',
  inputs: { price, moisture },
  output: { kind: 'number', label: 'Price per dry kg', unit: 'money/kg' },
  method: 'price / (1 − moisture)',
  sources: ['Balance of dry matter: the price buys only the solids.'],
  example: { given: { price: 2.1, moisture: 0.65 }, result: 6 },
  compute: ({ price, moisture }) => price / (1 - moisture),
});
