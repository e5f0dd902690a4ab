import { calculation } from '../core/calculation.js';
import { logarithmicSums, parts } from './mixture.js';
import { MIXTURE_SOURCE } from './sources.js';

export const mixPermeability = calculation({
  id: 'MIXPERMEABILITY',
  summary: 'Permeability of a cake mixed of several parts.',
  question: 'How permeable is a cake of these powders and beer solids?',
  inputs: parts,
  output: { kind: 'number', label: 'Mix permeability', unit: 'darcy' },
  method: 'exp(Σ share × ln permeability / Σ share)',
  sources: [MIXTURE_SOURCE],
  example: { given: { shares: [3, 1], permeabilities: [1, 0.0001] }, result: 0.1 },
  refuse: ({ shares }) => (shares.some((one) => one > 0) ? undefined : 'Shares must not all be 0.'),
  compute: ({ shares, permeabilities }) => {
    const { share, weighted } = logarithmicSums(shares, permeabilities);
    return Math.exp(weighted / share);
  },
});
