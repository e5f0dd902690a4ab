import { calculation } from '../core/calculation.js';
import { moisture } from '../quantities.js';

export const dryBasis = calculation({
  id: 'DRYBASIS',
  summary: 'Water per dry mass from moisture on the wet basis.',
  question: 'How many kg of water come with each kg of dry powder?',
  inputs: { moisture },
  output: { kind: 'number', label: 'Water per dry mass', unit: 'kg/kg' },
  method: 'moisture / (1 − moisture)',
  sources: ['Definition of moisture on the wet and on the dry basis.'],
  example: { given: { moisture: 0.6 }, result: 1.5 },
  compute: ({ moisture }) => moisture / (1 - moisture),
});
