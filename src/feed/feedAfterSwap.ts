import { calculation } from '../core/calculation.js';
import { bodyFeed, dose } from '../quantities.js';

export const feedAfterSwap = calculation({
  id: 'FEEDAFTERSWAP',
  summary: 'Body feed that remains when a new stabiliser does part of its work.',
  question: 'The new stabiliser is a filter aid too: how much body feed can I save?',
  inputs: {
    feed: bodyFeed,
    stabiliser: { ...dose, label: 'New stabiliser dose' },
    credit: {
      kind: 'number',
      label: 'Credit',
      unit: 'fraction',
      limit: [0, 1],
      help: 'Share of the new powder that works as a filter aid: 0 for a gel, up to 1 for a powder as open as the body feed. A trial decides.',
      source: 'From nothing to all of it; no published figure is known.',
    },
    least: {
      ...bodyFeed,
      label: 'Least body feed',
      usual: [0, 100],
      preset: 0,
      help: 'Below which the cake blinds or the beer is not clear (FITCLARITY), whatever the stabiliser does.',
      source: 'Usual range: common practice, no source.',
    },
  },
  output: { kind: 'number', label: 'Body feed after the swap', unit: 'g/hL' },
  method: 'body feed − credit × new stabiliser dose, but not less than the least body feed',
  sources: ['Balance of filter aid: a first setting for a trial, not a prediction.'],
  cautions: ['dust'],
  example: { given: { feed: 90, stabiliser: 50, credit: 0.8, least: 40 }, result: 50 },
  refuse: ({ feed, least }) => (least <= feed ? undefined : 'Least body feed must not exceed Body feed.'),
  compute: ({ feed, stabiliser, credit, least }) => Math.max(least, feed - credit * stabiliser),
});
