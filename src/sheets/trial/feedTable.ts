import { fitFeed } from '../../cake/fitFeed.js';
import { cakeSolids } from '../../feed/cakeSolids.js';
import { sameSolids } from '../../moisture/sameSolids.js';
import { bodyFeed } from '../../quantities.js';
import { declaredInput, inputCell, spilled } from '../cells.js';
import { call, judgement } from '../formula.js';
import { type At, heading, type Line, note, titles, units } from '../layout.js';
import { FEED_TRIALS } from './logs.js';

/** Trials that the sheet has room for. */
const TRIALS = 12;
const RISE = declaredInput(fitFeed, 'rises');
const UNTIL = declaredInput(fitFeed, 'until');

const dry = (at: At): string =>
  `=IF(LEN(${at('trialFeeds')})=0,"",${call(sameSolids.id, [at('trialFeeds'), at('trialAidMoisture'), '0'])})`;

const JUDGED = [
  ['trialFeeds', cakeSolids, cakeSolids.inputs.feed.label],
  ['trialRises', fitFeed, fitFeed.inputs.rises.label],
  ['trialHours', fitFeed, fitFeed.inputs.until.label],
] as const;

const trial = (row: number): Line => ({
  ...(row === 0
    ? {
        marks: {
          trialFeeds: { column: 0, rows: TRIALS },
          trialRises: { column: 1, rows: TRIALS },
          trialHours: { column: 2, rows: TRIALS },
          trialDryFeeds: { column: 3, rows: TRIALS },
          'trials.picture': { column: 7, rows: TRIALS },
        },
        judged: [{ cells: { column: 0, rows: TRIALS, columns: JUDGED.length }, by: { column: 4 } }],
      }
    : {}),
  cells: (at) => [
    inputCell(bodyFeed, FEED_TRIALS[row]?.[0], 1),
    inputCell(RISE, FEED_TRIALS[row]?.[1], 4),
    inputCell(UNTIL, FEED_TRIALS[row]?.[2]),
    { ...spilled('g/hL'), ...(row === 0 ? { formula: dry(at) } : {}) },
    ...JUDGED.map(([name, calculation, label]) => ({
      style: 'note' as const,
      ...(row === 0 ? { formula: judgement(at(name), calculation, label) } : {}),
    })),
  ],
});

export const feedTable: readonly Line[] = [
  heading('Feed trials without stabiliser'),
  note(
    'One row for each run at its own body feed; same beer, flow and filter as the run with the old powder. A rise is the mean from the first beer to the hour named, which counts on a candle.',
  ),
  titles(
    [
      'Body feed as bought',
      'Pressure rise',
      UNTIL.label,
      'Body feed, dry',
      'Judged body feed',
      'Judged rise',
      'Judged hours',
    ],
    [0, 4],
  ),
  units(['g/hL', 'bar/h', 'h', 'g/hL']),
  ...Array.from({ length: TRIALS }, (_, row) => trial(row)),
];
