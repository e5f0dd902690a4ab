import { nowOf, proposedOf } from '../scenario.js';

/** How the two logged runs were made, old powder and new; doses as bought. */
export const RUNS = {
  feed: [nowOf('bodyFeed'), 60],
  stabiliserDose: [nowOf('stabiliserDose'), 52],
  stabiliserMoisture: [0.64, proposedOf('stabiliserMoisture')],
} as const;

/** What the outlet of the filter must keep, EBC. */
export const HAZE_LIMIT = 0.75;

/** Body feeds of the feed trials, made without stabiliser. */
export const TRIAL_FEEDS = [50, 70, 90, 110, 140, 170] as const;
