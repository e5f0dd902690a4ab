import { fitFeed } from '../../cake/fitFeed.js';
import { cakeSolids } from '../../feed/cakeSolids.js';
import { sameSolids } from '../../moisture/sameSolids.js';
import { bodyFeed } from '../../quantities.js';
import { declaredInput, inputCell, spilled, text } from '../cells.js';
import { call, judgement } from '../formula.js';
import { type At, heading, type Line, note, titles, units } from '../layout.js';
import { FEED_TRIALS } from './logs.js';

/** Trials that the sheet has room for. */
const TRIALS = 12;
const RISE = declaredInput(fitFeed, 'rises');

const dry = (at: At): string =>
  `=IF(LEN(${at('trialFeeds')})=0,"",${call(sameSolids.id, [at('trialFeeds'), at('trialAidMoisture'), '0'])})`;

const JUDGED = [
  ['trialFeeds', cakeSolids, cakeSolids.inputs.feed.label],
  ['trialRises', fitFeed, fitFeed.inputs.rises.label],
] as const;

const trial = (row: number): Line => ({
  ...(row === 0
    ? {
        marks: {
          trialFeeds: { column: 0, rows: TRIALS },
          trialRises: { column: 1, rows: TRIALS },
          trialDryFeeds: { column: 2, rows: TRIALS },
          'trials.picture': { column: 6, rows: TRIALS },
        },
        judged: [{ cells: { column: 0, rows: TRIALS, columns: 2 }, by: { column: 4 } }],
      }
    : {}),
  cells: (at) => [
    inputCell(bodyFeed, FEED_TRIALS[row]?.[0], 1),
    inputCell(RISE, FEED_TRIALS[row]?.[1], 4),
    { ...spilled('g/hL'), ...(row === 0 ? { formula: dry(at) } : {}) },
    text('', 'unit'),
    ...JUDGED.map(([name, calculation, label]) => ({
      style: 'note' as const,
      ...(row === 0 ? { formula: judgement(at(name), calculation, label) } : {}),
    })),
  ],
});

export const feedTable: readonly Line[] = [
  heading('Feed trials without stabiliser'),
  note('One row for each run at its own body feed; same beer, flow and filter as the run with the old powder.'),
  titles(['Body feed as bought', 'Pressure rise', 'Body feed, dry', '', 'Judged body feed', 'Judged rise'], [0, 3]),
  units(['g/hL', 'bar/h', 'g/hL']),
  ...Array.from({ length: TRIALS }, (_, row) => trial(row)),
];
