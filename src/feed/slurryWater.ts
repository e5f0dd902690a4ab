import { calculation } from '../core/calculation.js';
import { mass, powderDensity, slurryStrength as strength } from '../quantities.js';

export const slurryWater = calculation({
  id: 'SLURRYWATER',
  summary: 'Water for a slurry of a given strength.',
  question: 'How much water goes to this powder?',
  inputs: { powder: { ...mass, label: 'Powder' }, strength, density: powderDensity },
  output: { kind: 'number', label: 'Water', unit: 'L' },
  method: 'powder / slurry strength − powder / powder density',
  sources: ['Balance of volume; water and powder are taken to keep their volumes on mixing.'],
  cautions: ['dust'],
  example: { given: { powder: 230, strength: 230, density: 2300 }, result: 900 },
  refuse: ({ strength, density }) =>
    strength < density
      ? undefined
      : 'Slurry strength must be below Powder density: no water makes a slurry as dense as its powder.',
  compute: ({ powder, strength, density }) => powder / strength - powder / density,
});
