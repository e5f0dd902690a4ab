import { calculation } from '../core/calculation.js';
import { pump } from '../quantities.js';

export const chargeHours = calculation({
  id: 'CHARGEHOURS',
  summary: 'Hours that a full slurry tank lasts.',
  question: 'When must the next slurry be made up?',
  inputs: {
    tank: {
      kind: 'number',
      label: 'Slurry tank',
      unit: 'L',
      limit: [0, 1e6],
      usual: [200, 5000],
      help: 'Slurry that the pump can draw before the tank must be made up again.',
      source: 'Usual range: common practice, no source.',
    },
    pump,
  },
  output: { kind: 'number', label: 'Time to the next make-up', unit: 'h' },
  method: 'slurry tank / pump rate',
  sources: ['Balance of volume over the slurry tank.'],
  cautions: ['dust'],
  example: { given: { tank: 600, pump: 150 }, result: 4 },
  compute: ({ tank, pump }) => tank / pump,
});
