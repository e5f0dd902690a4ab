import { bodyFeed } from '../quantities.js';
import type { RunPlan } from './input.js';

const end = {
  ...bodyFeed,
  limit: [0.1, 10_000],
} as const;

/** The body feeds that a search or a curve spans. */
export const feedSpan = {
  least: {
    ...end,
    label: 'Least body feed',
    preset: 50,
    help: 'The least that your beer’s clarity allows (FITCLARITY); the plan’s Least body feed for clarity counts where it is higher.',
  },
  most: { ...end, label: 'Most body feed', preset: 250, help: 'The most that you would dose.' },
} as const;

interface FeedCase {
  readonly labels: { readonly values: RunPlan };
}

/** A resistance was fitted on one mix, so it cannot tell what another feed does. */
export const feedRefusal = ({ labels: { values } }: FeedCase): string | undefined =>
  values.cakeResistance === undefined
    ? undefined
    : 'Body feed is varied here, so permeabilities are needed: Cake resistance holds only for the mix that it was fitted on.';

/** The least feed of a search, or the plan's own where that is higher. */
export const leastOf = ({ leastFeed }: RunPlan, least: number): number => Math.max(least, leastFeed);

export function spanRefusal(given: FeedCase & { readonly least: number; readonly most: number }): string | undefined {
  const refusal = feedRefusal(given);
  if (refusal !== undefined || given.least < given.most) return refusal;
  return 'Least body feed must lie below Most body feed.';
}
