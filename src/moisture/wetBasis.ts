import { calculation } from '../core/calculation.js';

export const wetBasis = calculation({
  id: 'WETBASIS',
  summary: 'Moisture on the wet basis from water per dry mass.',
  question: 'What moisture is this many kg of water per kg of dry powder?',
  inputs: {
    waterPerDry: {
      kind: 'number',
      label: 'Water per dry mass',
      unit: 'kg/kg',
      limit: [0, 999],
      usual: [0, 2.5],
      help: 'Water for each kg of dry solids (dry basis).',
      source: 'Usual range: 0 to 71 % on the wet basis, as for hydrogels and drier powders.',
    },
  },
  output: { kind: 'number', label: 'Moisture', unit: 'fraction' },
  method: 'water per dry mass / (1 + water per dry mass)',
  sources: ['Definition of moisture on the wet and on the dry basis.'],
  example: { given: { waterPerDry: 1.5 }, result: 0.6 },
  compute: ({ waterPerDry }) => waterPerDry / (1 + waterPerDry),
});
