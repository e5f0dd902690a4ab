import { calculation } from '../core/calculation.js';
import { beerSolids, bodyFeed } from '../quantities.js';

const end = { ...bodyFeed, usual: [20, 250] } as const;

export const feedForSolids = calculation({
  id: 'FEEDFORSOLIDS',
  summary: 'Body feed in proportion to what the beer brings, between a least and a most.',
  question: 'The beer gets murkier: how much body feed keeps the cake as open?',
  inputs: {
    feed: { ...bodyFeed, help: 'Dosed while the beer brought Beer solids.' },
    solids: { ...beerSolids, limit: [0.5, 5000], help: 'Dry, in each hL of the beer at that feed.' },
    newSolids: {
      ...beerSolids,
      label: 'New beer solids',
      limit: [0.5, 5000],
      help: 'Dry, in each hL of the beer that comes now.',
    },
    least: { ...end, label: 'Least body feed', preset: 0, help: 'Below which the beer is not clear (FITCLARITY).' },
    most: {
      ...end,
      label: 'Most body feed',
      limit: [0.1, 10_000],
      preset: 10_000,
      help: 'The most that your pump can dose, or that you would.',
    },
  },
  output: { kind: 'number', label: 'Body feed', unit: 'g/hL' },
  method:
    'feed × new beer solids / beer solids, not below the least and not above the most. In one proportion the cake’s mix, and so its permeability, stays as it was (MIXPERMEABILITY); the rise grows with all solids together',
  sources: ['Proportion; that the mix alone decides the permeability is the model of MIXPERMEABILITY.'],
  cautions: ['dust'],
  example: { given: { feed: 90, solids: 25, newSolids: 35, least: 50, most: 150 }, result: 126 },
  refuse: ({ least, most }) => (least <= most ? undefined : 'Least body feed must not exceed Most body feed.'),
  compute: ({ feed, solids, newSolids, least, most }) => Math.min(most, Math.max(least, (feed * newSolids) / solids)),
});
