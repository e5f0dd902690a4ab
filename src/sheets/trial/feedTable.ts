import { fitFeed } from '../../cake/fitFeed.js';
import { sameSolids } from '../../moisture/sameSolids.js';
import { bodyFeed } from '../../quantities.js';
import { declaredInput, inputCell, spilled, text } from '../cells.js';
import { call } from '../formula.js';
import { type At, heading, type Line, note, titles } from '../layout.js';
import { FEED_TRIALS } from './logs.js';

/** Trials that the sheet has room for. */
const TRIALS = 12;
const RISE = declaredInput(fitFeed, 'rises');

const dry = (at: At): string =>
  `=IF(${at('trialFeeds')}="","",${call(sameSolids.id, [at('trialFeeds'), at('trialAidMoisture'), '0'])})`;

const trial = (row: number): Line => ({
  ...(row === 0
    ? {
        marks: {
          trialFeeds: { column: 0, rows: TRIALS },
          trialRises: { column: 1, rows: TRIALS },
          trialDryFeeds: { column: 2, rows: TRIALS },
        },
      }
    : {}),
  cells: (at) => [
    inputCell(bodyFeed, FEED_TRIALS[row]?.[0], 1),
    inputCell(RISE, FEED_TRIALS[row]?.[1], 4),
    { ...spilled('g/hL'), ...(row === 0 ? { formula: dry(at) } : {}) },
  ],
});

export const feedTable: readonly Line[] = [
  heading('Feed trials without stabiliser'),
  note('One row for each run at its own body feed; same beer, flow and filter as the run with the old powder.'),
  titles(['Body feed as bought', 'Pressure rise', 'Body feed, dry']),
  { cells: () => ['g/hL', 'bar/h', 'g/hL'].map((unit) => text(unit, 'unit')) },
  ...Array.from({ length: TRIALS }, (_, row) => trial(row)),
];
