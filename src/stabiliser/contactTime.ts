import { calculation } from '../core/calculation.js';
import { flow, tank } from '../quantities.js';

export const contactTime = calculation({
  id: 'CONTACTTIME',
  summary: 'Mean contact time that a buffer tank gives.',
  question: 'How long does the stabiliser stay in the beer?',
  inputs: { tank, flow },
  output: { kind: 'number', label: 'Contact time', unit: 'min' },
  method: 'tank / flow; plug flow, so a stirred tank gives part of the beer less time',
  sources: [
    'Mean residence time: O. Levenspiel, Chemical Reaction Engineering, 3rd edition, 1999, chapter 5 (from memory).',
  ],
  example: { given: { tank: 20, flow: 240 }, result: 5 },
  compute: ({ tank, flow }) => tank / flow,
});
