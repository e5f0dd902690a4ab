import { calculation } from '../core/calculation.js';
import { toSI } from '../core/units.js';
import { concentrations, SILICA_LIMITS } from './dust.js';

const SHIFT = toSI(8, 'h');
const DAY = toSI(24, 'h');

const sum = (values: Float64Array): number => values.reduce((total, one) => total + one, 0);

export const dustAverage = calculation({
  id: 'DUSTAVERAGE',
  summary: 'Average concentration over 8 hours from the parts of a shift.',
  question: 'How much dust did a worker breathe, averaged over the shift?',
  inputs: {
    concentrations,
    hours: {
      kind: 'series',
      least: 1,
      label: 'Hours',
      unit: 'h',
      limit: [0, 24],
      help: 'How long each concentration lasted. Time without exposure need not be given.',
      source: 'No part of a day is longer than a day.',
    },
  },
  output: { kind: 'number', label: 'Average over 8 hours', unit: 'mg/m³' },
  method: 'Σ concentration × hours / 8; divided by 8 even where the hours add up to less or to more',
  sources: ['29 CFR 1910.1000(d)(1)(i), cumulative exposure for an 8-hour work shift.', SILICA_LIMITS],
  cautions: ['dust'],
  example: { given: { concentrations: [0.12, 0.02], hours: [1, 6] }, result: 0.03 },
  refuse: ({ hours }) =>
    // A slack of a millionth lets twelve times two hours pass, however they were rounded.
    sum(hours) > DAY * (1 + 1e-6) ? 'Hours must not add up to more than 24 h.' : undefined,
  compute: ({ concentrations, hours }) =>
    concentrations.reduce((total, one, part) => total + one * (hours[part] as number), 0) / SHIFT,
});
