import { oneSided, studentQuantile, studentTails } from './student.js';
import { mean, spreadOf } from './sums.js';

const CERTAINTY = 0.95;

/** Two groups of figures that scatter alike: how far their means lie apart, and how sure that is. */
export interface Apart {
  /** Mean of the second less that of the first. */
  readonly difference: number;
  /** Standard deviation within the groups, pooled. */
  readonly scatter: number;
  /** How far to either side of the difference the truth lies in 95 % of cases. */
  readonly reach: number;
  /** Chance that groups of one kind lie so far apart or further. */
  readonly chance: number;
}

/** Student's comparison of two groups; at least three figures in all. */
export function apart(first: readonly number[], second: readonly number[]): Apart {
  const difference = mean(second) - mean(first);
  const freedom = first.length + second.length - 2;
  const scatter = Math.sqrt((spreadOf(first) + spreadOf(second)) / freedom);
  const error = scatter * Math.sqrt(1 / first.length + 1 / second.length);
  const chance = error > 0 ? studentTails(difference / error, freedom) : difference === 0 ? 1 : 0;
  return { difference, scatter, reach: error * studentQuantile(CERTAINTY, freedom), chance };
}

/** The difference that so many figures of each group would show, at 95 % certainty and with a chance to see it. */
export function visible(each: number, scatter: number, seeing: number): number {
  const freedom = 2 * each - 2;
  // Seen in so many of all cases: one side of the distribution only.
  const beyond = oneSided(seeing, freedom);
  return (studentQuantile(CERTAINTY, freedom) + beyond) * scatter * Math.sqrt(2 / each);
}

/** So many figures of each group show a difference, from two on; undefined where more than `most` were needed. */
export function neededEach(difference: number, scatter: number, seeing: number, most: number): number | undefined {
  if (visible(most, scatter, seeing) > difference) return undefined;
  let few = 1;
  let enough = most;
  while (enough - few > 1) {
    const middle = Math.floor((few + enough) / 2);
    if (visible(middle, scatter, seeing) > difference) few = middle;
    else enough = middle;
  }
  return enough;
}
