import { calculation } from '../core/calculation.js';
import { mass } from '../quantities.js';
import { dryMatter } from './inputs.js';

export const spentCake = calculation({
  id: 'SPENTCAKE',
  summary: 'Wet spent cake from the dry solids that went into it.',
  question: 'How much spent cake must be taken away?',
  inputs: {
    dryPowder: {
      ...mass,
      label: 'Dry powder',
      help: 'Precoat, body feed and stabiliser on the filter, without their water (DRYMASS).',
    },
    dryMatter,
    beerSolids: {
      ...mass,
      label: 'Beer solids',
      preset: 0,
      help: 'Dry yeast and haze that the filter held back.',
    },
  },
  output: { kind: 'number', label: 'Spent cake', unit: 'kg' },
  method: '(dry powder + beer solids) / dry matter',
  sources: ['Balance of dry matter: what went in dry comes out in the cake.'],
  cautions: ['dust'],
  example: { given: { dryPowder: 290, dryMatter: 0.25, beerSolids: 50 }, result: 1360 },
  compute: ({ dryPowder, dryMatter, beerSolids }) => (dryPowder + beerSolids) / dryMatter,
});
