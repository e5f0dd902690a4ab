import { calculation } from '../core/calculation.js';
import { bodyFeed, mass, volume } from '../quantities.js';

export const powderPerHl = calculation({
  id: 'POWDERPERHL',
  summary: 'All powder for each hL of beer, precoat and body feed together.',
  question: 'How much powder does a hL take in all?',
  inputs: {
    precoat: { ...mass, label: 'Precoat', help: 'Powder laid before the run, all coats together.' },
    feed: bodyFeed,
    run: volume,
  },
  output: { kind: 'number', label: 'Powder in all', unit: 'g/hL' },
  method: 'body feed + precoat / run volume',
  sources: ['Balance of mass over one run.'],
  example: { given: { precoat: 40, feed: 90, run: 2000 }, result: 110 },
  compute: ({ precoat, feed, run }) => feed + precoat / run,
});
