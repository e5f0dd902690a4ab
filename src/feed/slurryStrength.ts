import { calculation } from '../core/calculation.js';
import { mass, powderDensity } from '../quantities.js';

export const slurryStrength = calculation({
  id: 'SLURRYSTRENGTH',
  summary: 'Strength of a slurry made of powder and water.',
  question: 'So much powder in so much water: how strong is the slurry?',
  inputs: {
    powder: { ...mass, label: 'Powder' },
    water: {
      kind: 'number',
      label: 'Water',
      unit: 'L',
      limit: [0.001, 1e7],
      usual: [100, 5000],
      help: 'Put into the tank beside the powder.',
      source: 'Usual range: common practice, no source.',
    },
    density: powderDensity,
  },
  output: { kind: 'number', label: 'Slurry strength', unit: 'g/L' },
  method:
    'powder / (water + powder / powder density): the powder takes up room, so a litre of slurry holds less than a litre of water',
  sources: ['Balance of volume; water and powder are taken to keep their volumes on mixing.'],
  cautions: ['dust'],
  example: { given: { powder: 230, water: 900, density: 2300 }, result: 230 },
  compute: ({ powder, water, density }) => powder / (water + powder / density),
});
