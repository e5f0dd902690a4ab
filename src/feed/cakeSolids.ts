import { calculation } from '../core/calculation.js';
import { beerSolids, bodyFeed, dose, moisture } from '../quantities.js';

export const cakeSolids = calculation({
  id: 'CAKESOLIDS',
  summary: 'Dry solids that each hL of beer lays on the cake.',
  question: 'How much dry cake does a hL make?',
  inputs: {
    feed: bodyFeed,
    stabiliser: { ...dose, label: 'Stabiliser dose', usual: [0, 150], preset: 0 },
    stabiliserMoisture: { ...moisture, label: 'Stabiliser moisture', preset: 0 },
    beerSolids: { ...beerSolids, usual: [0, 100], preset: 0 },
    removed: {
      kind: 'number',
      label: 'Removed before filter',
      unit: 'fraction',
      limit: [0, 1],
      preset: 0,
      help: 'Share of the stabiliser that leaves with the yeast before the beer comes to the filter.',
      source: 'From nothing to all of it.',
    },
    aidMoisture: { ...moisture, label: 'Filter aid moisture', usual: [0, 0.1], preset: 0 },
  },
  output: { kind: 'number', label: 'Solids to the cake', unit: 'g/hL' },
  method:
    'body feed × (1 − filter aid moisture) + (1 − removed before filter) × stabiliser dose × (1 − stabiliser moisture) + beer solids',
  sources: ['Balance of dry matter over the filter; what passes through with the beer is neglected.'],
  cautions: ['dust'],
  example: {
    given: { feed: 90, stabiliser: 60, stabiliserMoisture: 0.65, beerSolids: 25, aidMoisture: 0.005 },
    result: 135.55,
  },
  compute: ({ feed, stabiliser, stabiliserMoisture, beerSolids, removed, aidMoisture }) =>
    feed * (1 - aidMoisture) + (1 - removed) * stabiliser * (1 - stabiliserMoisture) + beerSolids,
});
