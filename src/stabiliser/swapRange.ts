import { calculation } from '../core/calculation.js';
import { FACTOR_SOURCE, swapFactor } from './factors.js';
import { swapInputs } from './inputs.js';

export const swapRange = calculation({
  id: 'SWAPRANGE',
  summary: 'Low end, middle and high end of the dose after a swap of stabiliser.',
  question: 'Between which doses should a trial of the other stabiliser run?',
  inputs: swapInputs,
  output: {
    kind: 'row',
    fields: {
      low: { label: 'Low dose', unit: 'g/hL' },
      middle: { label: 'Middle dose', unit: 'g/hL' },
      high: { label: 'High dose', unit: 'g/hL' },
    },
  },
  method: 'dose × factor of the pair at positions 0, 0.5 and 1',
  sources: [FACTOR_SOURCE],
  cautions: ['dust'],
  example: {
    given: { dose: 60, fromKind: 'hydrogel', toKind: 'adsorptive' },
    result: { low: 42, middle: 51, high: 60 },
  },
  compute: ({ dose, fromKind, toKind }) => ({
    low: dose * swapFactor(fromKind, toKind, 0),
    middle: dose * swapFactor(fromKind, toKind, 0.5),
    high: dose * swapFactor(fromKind, toKind, 1),
  }),
});
