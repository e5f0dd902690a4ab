import { calculation } from '../core/calculation.js';
import { figure } from '../core/wording.js';
import { dose } from '../quantities.js';
import { costOfBeer } from './inputs.js';

export const breakEvenPrice = calculation({
  id: 'BREAKEVENPRICE',
  summary: 'The price at which a new powder costs as much per hL as the present way.',
  question: 'What may the new powder cost at most?',
  inputs: {
    presentCost: { ...costOfBeer, label: 'Present cost', help: 'All that the present way costs for each hL of beer.' },
    otherCost: {
      ...costOfBeer,
      label: 'Other cost',
      help: 'What the new way costs for each hL besides the new powder; 0 where there is nothing else.',
    },
    dose: { ...dose, limit: [0.001, 10_000], help: 'Of the new powder as bought, for each hL of beer.' },
  },
  output: { kind: 'number', label: 'Break-even price', unit: 'money/kg' },
  method: '(present cost − other cost) / dose; where the other cost alone is above the present cost there is none',
  sources: ['Both ways cost the same where other cost + dose × price = present cost.'],
  example: { given: { presentCost: 0.2, otherCost: 0.05, dose: 60 }, result: 2.5 },
  compute: ({ presentCost, otherCost, dose }) =>
    presentCost >= otherCost
      ? (presentCost - otherCost) / dose
      : {
          none: `No price breaks even: without the powder the new way costs ${figure(otherCost, 'money/hL')} already, more than the present ${figure(presentCost, 'money/hL')}.`,
        },
});
