import { calculation } from '../core/calculation.js';
import { concentrations, exposureLimits, SILICA_LIMITS } from './dust.js';

export const dustSum = calculation({
  id: 'DUSTSUM',
  summary: 'Sum of the shares of several limits; above 1 is over the limit.',
  question: 'Several dusts at once: are they too much together?',
  inputs: {
    concentrations: { ...concentrations, help: 'Of each substance, averaged over 8 hours.' },
    limits: exposureLimits,
  },
  output: { kind: 'number', label: 'Sum of shares', unit: '' },
  method: 'Σ concentration / limit; above 1 the exposure is over the limit, even where each substance keeps its own',
  sources: ['29 CFR 1910.1000(d)(2)(i), equivalent exposure for a mixture of air contaminants.', SILICA_LIMITS],
  cautions: ['dust'],
  example: { given: { concentrations: [0.01, 1], limits: [0.05, 4] }, result: 0.45 },
  compute: ({ concentrations, limits }) =>
    concentrations.reduce((total, one, substance) => total + one / (limits[substance] as number), 0),
});
