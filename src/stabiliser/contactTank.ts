import { calculation } from '../core/calculation.js';
import { contact, flow } from '../quantities.js';

export const contactTank = calculation({
  id: 'CONTACTTANK',
  summary: 'Buffer tank that gives a stabiliser its contact time.',
  question: 'How large must the buffer tank before the filter be?',
  inputs: { flow, contact },
  output: { kind: 'number', label: 'Tank', unit: 'hL' },
  method: 'flow × contact time; plug flow, so a stirred tank gives part of the beer less time',
  sources: [
    'Mean residence time: O. Levenspiel, Chemical Reaction Engineering, 3rd edition, 1999, chapter 5 (from memory).',
  ],
  example: { given: { flow: 240, contact: 5 }, result: 20 },
  compute: ({ flow, contact }) => flow * contact,
});
