import { calculation } from '../core/calculation.js';
import { FACTOR_SOURCE, swapFactor } from './factors.js';
import { position, swapInputs } from './inputs.js';

export const swapDose = calculation({
  id: 'SWAPDOSE',
  summary: 'Dose of another kind of stabiliser that should do the same work.',
  question: 'How much of the other stabiliser replaces the present dose?',
  inputs: { ...swapInputs, position },
  output: { kind: 'number', label: 'Dose after the swap', unit: 'g/hL' },
  method: 'dose × factor of the pair; equal dry silica is not equal effect, so a trial on your beer decides',
  sources: [FACTOR_SOURCE],
  cautions: ['dust'],
  example: { given: { dose: 60, fromKind: 'hydrogel', toKind: 'adsorptive' }, result: 51 },
  compute: ({ dose, fromKind, toKind, position }) => dose * swapFactor(fromKind, toKind, position),
});
