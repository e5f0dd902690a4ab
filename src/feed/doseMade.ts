import { calculation } from '../core/calculation.js';
import { flow, pump, slurryStrength } from '../quantities.js';

export const doseMade = calculation({
  id: 'DOSEMADE',
  summary: 'Dose that a pump setting really gives.',
  question: 'What dose does the pump give at this setting?',
  inputs: { pump: { ...pump, limit: [0, 1e6] }, strength: slurryStrength, flow },
  output: { kind: 'number', label: 'Dose', unit: 'g/hL' },
  method: 'pump rate × slurry strength / flow',
  sources: ['Balance of mass over the dosing point.'],
  cautions: ['dust'],
  example: { given: { pump: 150, strength: 150, flow: 250 }, result: 90 },
  compute: ({ pump, strength, flow }) => (pump * strength) / flow,
});
