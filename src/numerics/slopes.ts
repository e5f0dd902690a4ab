import { heights, type Points, sortCounting, sortIndices } from './inversions.js';

/** How many of the slopes between points of different x lie below a slope, and how many not above it. */
export interface Standing {
  readonly below: number;
  readonly upTo: number;
}

/** Slopes between all pairs of points of different x, without making them. */
export interface Slopes {
  readonly count: number;
  standing(slope: number): Standing;
  /** The slopes strictly between two others, at these ascending positions of their enumeration; all where none are given. */
  between(low: number, high: number, positions?: Float64Array): number[];
}

const sameAsBefore = (values: Float64Array, index: number): boolean => values[index] === values[index - 1];

/** Pairs within stretches of equal neighbours. */
function equalPairs(length: number, sameAsBefore: (index: number) => boolean): number {
  let pairs = 0;
  let stretch = 1;
  for (let index = 1; index < length; index++) {
    stretch = sameAsBefore(index) ? stretch + 1 : 1;
    pairs += stretch - 1;
  }
  return pairs;
}

/** @param points in the order of x, ties by y. */
export function slopesOf(points: Points): Slopes {
  const { x, y } = points;
  const length = x.length;
  const sameX = equalPairs(length, (index) => sameAsBefore(x, index));
  const samePoint = equalPairs(length, (index) => sameAsBefore(x, index) && sameAsBefore(y, index));
  const own = new Float64Array(length);
  const spare = new Float64Array(length);
  const slope = (one: number, other: number): number =>
    ((y[other] as number) - (y[one] as number)) / ((x[other] as number) - (x[one] as number));

  const standing = (at: number): Standing => {
    const { sorted, inversions } = sortCounting(heights(points, at, own), spare);
    const level = equalPairs(length, (index) => sameAsBefore(sorted, index));
    return { below: inversions, upTo: inversions + level - samePoint };
  };

  /** Order along a slope; of points level with each other, those further on come first or last. */
  const along = (at: number, into: Float64Array, furtherFirst: boolean) => {
    const z = heights(points, at, into);
    return (one: number, other: number): boolean => {
      if (z[one] !== z[other]) return (z[one] as number) < (z[other] as number);
      return (x[one] === x[other] || !furtherFirst) === one < other;
    };
  };

  const between = (low: number, high: number, positions?: Float64Array): number[] => {
    const order = sortIndices(
      Int32Array.from(x, (_, index) => index),
      along(low, own, true),
    );
    const found: number[] = [];
    let seen = 0;
    let next = 0;
    sortIndices(order, along(high, spare, false), (place, left, from, count) => {
      if (positions === undefined) {
        for (let i = 0; i < count; i++) found.push(slope(left[from + i] as number, place));
        return;
      }
      for (; next < positions.length && (positions[next] as number) < seen + count; next++) {
        found.push(slope(left[from + (positions[next] as number) - seen] as number, place));
      }
      seen += count;
    });
    return found;
  };

  return { count: (length * (length - 1)) / 2 - sameX, standing, between };
}
