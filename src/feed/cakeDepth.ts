import { calculation } from '../core/calculation.js';
import { cakeLoad as load } from '../quantities.js';
import { CYLINDER_SOURCE, septum } from './septum.js';

export const cakeDepth = calculation({
  id: 'CAKEDEPTH',
  summary: 'Depth of a cake of a given load, on a flat septum or a candle.',
  question: 'How thick does the cake get?',
  inputs: { load, ...septum },
  output: { kind: 'number', label: 'Cake depth', unit: 'mm' },
  method:
    'flat: load / cake density; on a candle: r (√(1 + 2 load / (cake density × r)) − 1), with the septum radius r',
  sources: [CYLINDER_SOURCE],
  example: { given: { load: 6, density: 300, radius: 15 }, result: 13.722_813_232_690_143 },
  // Written so that a wide candle runs into the flat septum without losing digits.
  compute: ({ load, density, radius }) => {
    const flat = load / density;
    return radius === 0 ? flat : (2 * flat) / (1 + Math.sqrt(1 + (2 * flat) / radius));
  },
});
