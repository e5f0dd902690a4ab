import { beta } from './beta.js';

/** Beyond so many degrees of freedom a normal distribution serves to nine digits; the fraction would take long. */
const NORMAL = 1e9;

/** Chance that Student’s t lies further from 0 than this, on both sides together. */
export function studentTails(t: number, freedom: number): number {
  const squared = t * t;
  const f = Math.min(freedom, NORMAL);
  if (!(squared < Number.POSITIVE_INFINITY)) return 0;
  return beta(f / 2, 0.5, f / (f + squared), squared / (f + squared));
}

/** What lies beyond a place to either side falls as the place moves out: where it has fallen to a share. */
export function tailQuantile(tails: (t: number) => number, share: number): number {
  let most = 1;
  while (tails(most) > share && most < 1e12) most *= 2;
  let least = 0;
  for (;;) {
    const middle = least + (most - least) / 2;
    if (middle === least || middle === most || most - least < 1e-13 * most) return middle;
    if (tails(middle) > share) least = middle;
    else most = middle;
  }
}

/** How many standard errors to either side hold the truth in this share of cases: Student’s t, both sides. */
export const studentQuantile = (share: number, freedom: number): number =>
  tailQuantile((t) => studentTails(t, freedom), 1 - share);

/** How many standard errors to one side hold the truth with this chance. */
export const oneSided = (chance: number, freedom: number): number => studentQuantile(2 * chance - 1, freedom);
