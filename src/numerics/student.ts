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

/** Half the width to which a quantile is narrowed down, over the quantile. */
const NARROW = 5e-14;

/**
 * What lies beyond a place to either side falls as the place moves out: where it has fallen to a share. The chord between both
 * ends shows the way, held so near the middle that no quantile takes longer than halving, I. F. D. Oliveira and R. H. C.
 * Takahashi, ACM Trans. Math. Softw. 47 (2021) 5 (reference from memory).
 */
export function tailQuantile(tails: (t: number) => number, share: number): number {
  if (share >= 1) return 0;
  const above = (t: number) => Math.log(tails(t) / share);
  let [least, high] = [0, -Math.log(share)];
  let [most, low] = [1, above(1)];
  while (low > 0 && most < 1e12) {
    [least, high] = [most, low];
    most *= 2;
    low = above(most);
  }
  const narrow = NARROW * most;
  const width = most - least;
  const halvings = Math.ceil(Math.log2(width / (2 * narrow))) + 1;
  for (let at = 0; most - least > 2 * narrow; at++) {
    const middle = least + (most - least) / 2;
    const chord = Number.isFinite(low) ? (high * most - low * least) / (high - low) : middle;
    const side = Math.sign(middle - chord);
    const towards = chord + side * Math.min((0.2 * (most - least) ** 2) / width, Math.abs(middle - chord));
    const reach = narrow * 2 ** (halvings - at) - (most - least) / 2;
    const next = Math.abs(towards - middle) <= reach ? towards : middle - side * reach;
    const value = above(next);
    if (value === 0) return next;
    if (value > 0) [least, high] = [next, value];
    else [most, low] = [next, value];
  }
  return least + (most - least) / 2;
}

/** How many standard errors to either side hold the truth in this share of cases: Student’s t, both sides. */
export const studentQuantile = (share: number, freedom: number): number =>
  tailQuantile((t) => studentTails(t, freedom), 1 - share);

/** How many standard errors to one side hold the truth with this chance. */
export const oneSided = (chance: number, freedom: number): number => studentQuantile(2 * chance - 1, freedom);
