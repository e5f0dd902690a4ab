import { sortIndices } from './inversions.js';
import { type Slopes, slopesOf } from './slopes.js';

/** As many slopes are sampled at a time as there are points; so many for each point are few enough to be made at once. */
const FEW = 8;
const LEAST_SIZE = 10_000;
/** Multiples of the golden section leave no gaps and follow no pattern of a log: the same answer every time, without chance. */
const GOLDEN = 0.618_033_988_749_894_8;
/** How many standard deviations of a sampled rank are left on either side of the median. */
const MARGIN = 3;

/**
 * Theil and Sen's slope: the median of the slopes between all pairs of points, pairs at equal x left out. Exact to
 * rounding, in O(n log n): a sample of the slopes brackets the median, and inversions count how many lie outside.
 * @returns undefined where no two points differ in x.
 */
export function medianSlope(x: Float64Array, y: Float64Array): number | undefined {
  const slopes = slopesOf(inOrder(x, y));
  if (slopes.count === 0) return undefined;
  const [low, high] = [Math.floor((slopes.count - 1) / 2), Math.floor(slopes.count / 2)];
  const found = select(slopes, low, high, Math.max(x.length, LEAST_SIZE));
  return (found[0] + found[1]) / 2;
}

function inOrder(x: Float64Array, y: Float64Array) {
  const order = sortIndices(
    Int32Array.from(x, (_, index) => index),
    (one, other) =>
      x[one] === x[other] ? (y[one] as number) < (y[other] as number) : (x[one] as number) < (x[other] as number),
  );
  const taken = (values: Float64Array) => Float64Array.from(order, (index) => values[index] as number);
  return { x: taken(x), y: taken(y) };
}

const ascending = (values: number[]): number[] => Array.from(Float64Array.from(values).sort());

/** Ascending positions among so many, one in each of equal parts. */
const spreadPositions = (among: number, count: number): Float64Array =>
  Float64Array.from({ length: count }, (_, part) =>
    Math.min(among - 1, Math.floor(((part + ((part * GOLDEN) % 1)) * among) / count)),
  );

/** The slopes at two neighbouring ranks. */
function select(slopes: Slopes, first: number, last: number, size: number): readonly [number, number] {
  let low = Number.NEGATIVE_INFINITY;
  let high = Number.POSITIVE_INFINITY;
  let upToLow = 0;
  let belowHigh = slopes.count;
  for (;;) {
    const left = belowHigh - upToLow;
    if (left <= FEW * size) {
      const all = ascending(slopes.between(low, high));
      const at = (rank: number) => all[Math.min(Math.max(rank - upToLow, 0), all.length - 1)] as number;
      return [at(first), at(last)];
    }
    const sample = ascending(slopes.between(low, high, spreadPositions(left, size)));
    const place = ((first - upToLow) / left) * sample.length;
    const reach = MARGIN * 0.5 * Math.sqrt(sample.length);
    const guesses = [Math.floor(place - reach), Math.ceil(place + reach)].map((index) => sample[index]);
    // What rounding throws upon a bracket's own end is as near to the median as rounding lets it be told.
    const inside = guesses.filter((guess) => guess !== undefined && guess > low && guess < high) as number[];
    if (inside.length === 0) return [sample[Math.round(place)] as number, sample[Math.round(place)] as number];
    for (const guess of inside) {
      if (guess <= low || guess >= high) continue;
      const { below, upTo } = slopes.standing(guess);
      if (last < below) [high, belowHigh] = [guess, below];
      else if (first >= upTo) [low, upToLow] = [guess, upTo];
      else if (first >= below && last < upTo) return [guess, guess];
      else return [select(slopes, first, first, size)[0], select(slopes, last, last, size)[0]];
    }
  }
}
