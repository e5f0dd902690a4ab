import { calculation } from '../core/calculation.js';
import { mass, moisture } from '../quantities.js';
import { SHRINK_COLUMNS } from './sources.js';

export const asIsMass = calculation({
  id: 'ASISMASS',
  summary: 'Powder as bought that holds a given dry mass.',
  question: 'How much of the moist powder must I weigh to get this much dry powder?',
  inputs: {
    dryMass: { ...mass, label: 'Dry mass', help: 'Solids without any water.' },
    moisture,
  },
  output: { kind: 'number', label: 'Mass', unit: 'kg' },
  method: 'mass = dry mass / (1 − moisture)',
  sources: [SHRINK_COLUMNS],
  example: { given: { dryMass: 350, moisture: 0.65 }, result: 1000 },
  compute: ({ dryMass, moisture }) => dryMass / (1 - moisture),
});
