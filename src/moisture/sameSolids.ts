import { calculation } from '../core/calculation.js';
import { moisture } from '../quantities.js';
import { SHRINK_COLUMNS } from './sources.js';

export const sameSolids = calculation({
  id: 'SAMESOLIDS',
  summary: 'The amount at another moisture that holds the same dry solids.',
  question: 'What is the same dose at another moisture?',
  inputs: {
    amount: {
      kind: 'number',
      label: 'Amount',
      unit: 'as given',
      limit: [0, 1e9],
      help: 'A mass or a dose in any unit; the answer has the same unit.',
      source: 'The limits only keep out slips of the keyboard; the figure is your own.',
    },
    moisture: { ...moisture, help: 'Moisture of the amount given (wet basis). Write 65 % or 0.65.' },
    newMoisture: { ...moisture, label: 'New moisture', help: 'Moisture that the answer is to have (wet basis).' },
  },
  output: { kind: 'number', label: 'Amount at the new moisture', unit: 'as given' },
  method: 'amount × (1 − moisture) / (1 − new moisture)',
  sources: [SHRINK_COLUMNS],
  example: { given: { amount: 76, moisture: 0.65, newMoisture: 0.05 }, result: 28 },
  compute: ({ amount, moisture, newMoisture }) => (amount * (1 - moisture)) / (1 - newMoisture),
});
