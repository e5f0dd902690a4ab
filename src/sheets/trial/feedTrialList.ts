import { fitClarity } from '../../cake/fitClarity.js';
import { fitFeed } from '../../cake/fitFeed.js';
import { sameSolids } from '../../moisture/sameSolids.js';
import { bodyFeed } from '../../quantities.js';
import { declaredInput } from '../cells.js';
import { call } from '../formula.js';
import type { Block } from '../list.js';
import { FEED_TRIALS } from './logs.js';

const UNTIL = declaredInput(fitFeed, 'until');

/** Runs without stabiliser, each at a body feed of its own. */
export const feedTrialList: Block = {
  name: 'trials',
  what: 'feed trial',
  room: 24,
  given: [
    { key: 'feed', label: 'Body feed', declared: bodyFeed, digits: 1 },
    { key: 'rise', label: 'Pressure rise', declared: declaredInput(fitFeed, 'rises'), digits: 4 },
    { key: 'hours', label: UNTIL.label, declared: UNTIL, mayBeBlank: true },
    { key: 'haze', label: 'Outlet haze', declared: declaredInput(fitClarity, 'hazes'), digits: 2, mayBeBlank: true },
  ],
  calculated: [
    {
      key: 'dry',
      label: 'Body feed, dry',
      unit: 'g/hL',
      formula: (column, at) => call(sameSolids.id, [column('feed'), at('trialAidMoisture'), '0']),
    },
  ],
  examples: FEED_TRIALS.map(([feed, rise, hours, haze]) => ({ feed, rise, hours, haze })),
  told: [
    ['feed', 'rise'],
    ['hours', 'haze'],
  ],
  rules: (column, at) => [
    [
      'refused',
      `(LEN(${column('hours')})=0)*(N(${at('trialRadius')})>0)`,
      'hours',
      `${UNTIL.label} is missing: on a candle the rise depends on it.`,
    ],
  ],
};
