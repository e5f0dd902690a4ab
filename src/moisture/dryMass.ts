import { calculation } from '../core/calculation.js';
import { mass, moisture } from '../quantities.js';
import { SHRINK_COLUMNS } from './sources.js';

export const dryMass = calculation({
  id: 'DRYMASS',
  summary: 'Dry solids in a powder of known moisture.',
  question: 'How much dry powder is in this delivery?',
  inputs: { mass, moisture },
  output: { kind: 'number', label: 'Dry mass', unit: 'kg' },
  method: 'dry mass = mass × (1 − moisture)',
  sources: [SHRINK_COLUMNS],
  example: { given: { mass: 1000, moisture: 0.65 }, result: 350 },
  compute: ({ mass, moisture }) => mass * (1 - moisture),
});
