import type { Blocks } from './blocks.js';
import { studentTails, tailQuantile } from './student.js';
import { dot } from './sums.js';

const CERTAINTY = 0.95;
/** A case of less chance than this adds nothing that is seen. */
const IDLE = 1e-9;

/** One way in which points may err: how they scatter, by which they are scaled, and how neighbours hang together. */
export interface Case {
  readonly blocks: readonly Blocks[];
  readonly correlation: number;
  /** Chance before the points are seen. */
  readonly before: number;
  /** Logarithm of the product of the scales, where cases differ in it. */
  readonly scale?: number;
}

export interface Uncertain {
  readonly error: number;
  /** How far to either side the truth lies in 95 % of cases, or with another certainty that was asked for. */
  readonly reach: number;
}

/** Variances and covariances of what one log adds to the fitted figures. */
export type Moments = (one: number, other: number) => number;

/** How sure the figures of a fit are. */
export interface FitErrors {
  /** Of a combination of the fitted figures; `moments` has their variances and covariances in each log. */
  of(variance: (moments: readonly Moments[]) => number, certainty?: number): Uncertain;
  /** Mean of a moment over all cases by their chance. */
  mean(moment: (moments: readonly Moments[]) => number): number;
}

/**
 * Errors where nobody knows in which of several ways points err: each is weighed by its restricted likelihood, and the
 * truth’s distribution is the mixture of one Student’s t for each.
 */
export function mixedErrors(cases: readonly Case[]): FitErrors & { readonly freedom: number } {
  const seen = cases.map(({ blocks, correlation, scale = 0 }) => {
    const one = seenWith(blocks, correlation);
    return { ...one, likelihood: one.likelihood - scale };
  });
  const { freedom } = seen[0] as (typeof seen)[number];
  const most = Math.max(...seen.map(({ likelihood }) => likelihood));
  const weighed = cases.map(({ before }, index) => before * Math.exp((seen[index]?.likelihood as number) - most));
  const all = weighed.reduce((sum, one) => sum + one, 0);
  const chances = weighed.map((one) => one / all);
  const moments = cases.map(({ blocks, correlation }, index) =>
    blocks.map(
      ({ weights }): Moments =>
        (one, other) =>
          (seen[index]?.noise as number) *
          together(weights[one] as Float64Array, weights[other] as Float64Array, correlation),
    ),
  );
  const mean = (of: (index: number) => number): number =>
    chances.reduce((sum, chance, index) => (chance < IDLE ? sum : sum + chance * of(index)), 0);
  return {
    freedom,
    mean: (moment) => mean((index) => moment(moments[index] as readonly Moments[])),
    of: (variance, certainty = CERTAINTY) => {
      const errors = moments.map((one) => Math.sqrt(variance(one)));
      const error = Math.sqrt(mean((index) => (errors[index] as number) ** 2));
      if (!(error > 0)) return { error, reach: error };
      const tails = (times: number) =>
        mean((index) => studentTails((times * error) / (errors[index] as number), freedom));
      return { error, reach: error * tailQuantile(tails, 1 - certainty) };
    },
  };
}

/** Restricted likelihood (its logarithm) of an autocorrelation, and the variance that it leaves. */
function seenWith(blocks: readonly Blocks[], correlation: number) {
  const innovation = 1 - correlation ** 2;
  let freedom = 0;
  let squares = 0;
  let likelihood = 0;
  for (const { residuals, design } of blocks) {
    if (residuals.length <= design.length) continue;
    const left = decorrelated(residuals, correlation);
    let used = 0;
    const axes: Float64Array[] = [];
    for (const column of design) {
      const axis = decorrelated(column, correlation);
      const before = dot(axis, axis);
      for (const other of axes) takeOff(axis, other);
      const size = dot(axis, axis);
      if (!(size > 1e-20 * before)) continue;
      used++;
      likelihood -= Math.log(size / innovation) / 2;
      axes.push(axis);
      takeOff(left, axis);
    }
    squares += dot(left, left) / innovation;
    freedom += residuals.length - used;
    likelihood -= ((residuals.length - 1) * Math.log(innovation)) / 2;
  }
  const unexplained = Math.max(squares, Number.MIN_VALUE);
  return { freedom, likelihood: likelihood - (freedom * Math.log(unexplained)) / 2, noise: unexplained / freedom };
}

function takeOff(from: Float64Array, along: Float64Array): void {
  const share = dot(from, along) / dot(along, along);
  for (let i = 0; i < from.length; i++) from[i] = (from[i] as number) - share * (along[i] as number);
}

/** A chain as independent steps of variance 1 − ρ². */
const decorrelated = (values: Float64Array, correlation: number): Float64Array =>
  values.map((one, i) =>
    i === 0 ? one * Math.sqrt(1 - correlation ** 2) : one - correlation * (values[i - 1] as number),
  );

/** Σ aᵢ bⱼ ρ^|i − j|. */
function together(one: Float64Array, other: Float64Array, correlation: number): number {
  let sum = 0;
  let before = 0;
  let otherBefore = 0;
  for (let i = 0; i < one.length; i++) {
    const [a, b] = [one[i] as number, other[i] as number];
    sum += a * b + a * otherBefore * correlation + b * before * correlation;
    before = a + correlation * before;
    otherBefore = b + correlation * otherBefore;
  }
  return sum;
}
