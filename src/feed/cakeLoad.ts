import { calculation } from '../core/calculation.js';
import { CYLINDER_SOURCE, septum } from './septum.js';

export const cakeLoad = calculation({
  id: 'CAKELOAD',
  summary: 'Load of a cake of a given depth, on a flat septum or a candle.',
  question: 'How much cake does the space between the septa hold?',
  inputs: {
    depth: {
      kind: 'number',
      label: 'Cake depth',
      unit: 'mm',
      limit: [0, 1000],
      usual: [1, 30],
      help: 'Depth of the cake, precoat included. Where cakes face each other, half the gap at most.',
      source: 'Usual range from memory: precoats 1.5–3 mm, 20–30 mm between facing septa.',
    },
    ...septum,
  },
  output: { kind: 'number', label: 'Cake load', unit: 'kg/m²' },
  method: 'flat: cake density × depth; on a candle: cake density × (depth + depth² / (2 r)), with the septum radius r',
  sources: [CYLINDER_SOURCE],
  example: { given: { depth: 15, density: 300, radius: 15 }, result: 6.75 },
  compute: ({ depth, density, radius }) =>
    radius === 0 ? density * depth : density * (depth + (depth * depth) / (2 * radius)),
});
