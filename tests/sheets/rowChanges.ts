import { OFFERS } from '../../src/sheets/quotes/offers.js';
import { FEED_TRIALS, OLD_LOG, REPEATED_RUNS } from '../../src/sheets/trial/logs.js';
import { BEERS } from '../../src/sheets/year/beers.js';

/** How many rows are pasted into a list: fewer than its example has, more, and many more. */
export const PASTED = [3, 20, 150] as const;

/** The lists whose rows are taken out, put in, pasted and doubled, by the keys of their sheets, with the rows of their examples. */
export const LISTS = {
  trial: OLD_LOG.length + REPEATED_RUNS.length + FEED_TRIALS.length,
  quotes: OFFERS.length,
  year: BEERS.length,
} as const;

/** The rows of an example that are taken out and put in again: all by `npm run spoil`, three in each test run. */
export const placesOf = (rows: number, all = Boolean(process.env.POWDERBOOK_SPOIL)): readonly number[] =>
  Array.from({ length: rows }, (_, row) => row).filter(
    (row) => all || [0, Math.floor(rows / 2), rows - 1].includes(row),
  );
