import { orderOf } from './order.js';
import { scatterAlong } from './scatter.js';
import { total } from './sums.js';

/** What a fit leaves of one log, reading by reading. */
export interface Left {
  /** Where each reading stands in its log: volume or time. */
  readonly places: Float64Array;
  readonly residuals: Float64Array;
  /** How the fitted curve follows each fitted figure, at every reading. */
  readonly design: readonly Float64Array[];
  /** How much each fitted figure follows every reading. */
  readonly weights: readonly Float64Array[];
}

/** One log in stretches of neighbouring readings; all but the weights over the scatter there. */
export interface Blocks {
  readonly residuals: Float64Array;
  readonly design: readonly Float64Array[];
  /** Times the scatter. */
  readonly weights: readonly Float64Array[];
  /** Sums over the readings themselves: squares, and products of neighbours. */
  readonly squares: number;
  readonly neighbours: number;
}

/**
 * So many stretches a log has at most. Means over neighbours keep what wanders slowly and drop what a gauge adds at each
 * reading, so that the first shows however many readings there are.
 */
const MOST = 40;

/** Logs in the order of their places, scaled by their scatter and averaged to stretches. */
export function blocksOf(logs: readonly Left[]): readonly Blocks[] {
  const scatter = scatterAlong(
    joined(logs.map(({ residuals }) => residuals)),
    joined(logs.map(({ places }) => places)),
  );
  let from = 0;
  return logs.map((log) => {
    const own = scatter.subarray(from, from + log.residuals.length);
    from += log.residuals.length;
    return oneLog(log, own);
  });
}

function joined(parts: readonly Float64Array[]): Float64Array {
  const whole = new Float64Array(total(parts, ({ length }) => length));
  let from = 0;
  for (const one of parts) {
    whole.set(one, from);
    from += one.length;
  }
  return whole;
}

function oneLog({ places, residuals, design, weights }: Left, scatter: Float64Array): Blocks {
  const count = residuals.length;
  const order = orderOf(places);
  const blocks = Math.min(count, MOST);
  const ends = Array.from({ length: blocks + 1 }, (_, block) => Math.floor((block * count) / blocks));
  const sums = (values: Float64Array) =>
    Float64Array.from({ length: blocks }, (_, block) => {
      let sum = 0;
      for (let at = ends[block] as number; at < (ends[block + 1] as number); at++) {
        sum += values[order[at] as number] as number;
      }
      return sum;
    });
  const sizes = ends.slice(1).map((end, block) => end - (ends[block] as number));
  const scale = sums(scatter).map((sum, block) => sum / (sizes[block] as number));
  const scaled = (values: Float64Array) =>
    sums(values).map((sum, block) => sum / (sizes[block] as number) / (scale[block] as number));
  let squares = 0;
  let neighbours = 0;
  let before = 0;
  for (const row of order) {
    const one = (residuals[row] as number) / (scatter[row] as number);
    squares += one * one;
    neighbours += one * before;
    before = one;
  }
  return {
    squares,
    neighbours,
    residuals: scaled(residuals),
    design: design.map(scaled),
    weights: weights.map((one) => sums(one).map((sum, block) => sum * (scale[block] as number))),
  };
}
