/**
 * Points in the order of x (ties by y), looked at along a direction: with z = y − slope × x, two points stand in
 * inverted order exactly where the line through them is less steep than the slope.
 */
export interface Points {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** Heights of the points over a line of this slope; of a line without end, their order alone. */
export function heights({ x, y }: Points, slope: number, into: Float64Array): Float64Array {
  if (slope === Number.NEGATIVE_INFINITY) into.set(x);
  else if (slope === Number.POSITIVE_INFINITY) for (let i = 0; i < x.length; i++) into[i] = -(x[i] as number);
  else for (let i = 0; i < x.length; i++) into[i] = (y[i] as number) - slope * (x[i] as number);
  return into;
}

/** Sorts by merging, and counts the pairs that stood in inverted order; equal values are none. */
export function sortCounting(values: Float64Array, spare: Float64Array): { sorted: Float64Array; inversions: number } {
  const length = values.length;
  let from = values;
  let into = spare;
  let inversions = 0;
  for (let width = 1; width < length; width *= 2) {
    for (let start = 0; start < length; start += 2 * width) {
      const middle = Math.min(start + width, length);
      const end = Math.min(start + 2 * width, length);
      let left = start;
      let right = middle;
      for (let place = start; place < end; place++) {
        if (left < middle && (right >= end || (from[left] as number) <= (from[right] as number))) {
          into[place] = from[left++] as number;
        } else {
          into[place] = from[right++] as number;
          inversions += middle - left;
        }
      }
    }
    [from, into] = [into, from];
  }
  return { sorted: from, inversions };
}

type Meets = (place: number, left: Int32Array, from: number, count: number) => void;

/**
 * Sorts indices by merging.
 * @param meets called wherever an index passes over the `count` indices of `left` that begin at `from`.
 */
export function sortIndices(
  indices: Int32Array,
  standsBefore: (one: number, other: number) => boolean,
  meets?: Meets,
): Int32Array {
  const length = indices.length;
  let from: Int32Array = indices;
  let into: Int32Array = new Int32Array(length);
  for (let width = 1; width < length; width *= 2) {
    for (let start = 0; start < length; start += 2 * width) {
      const middle = Math.min(start + width, length);
      const end = Math.min(start + 2 * width, length);
      let left = start;
      let right = middle;
      for (let place = start; place < end; place++) {
        if (left < middle && (right >= end || !standsBefore(from[right] as number, from[left] as number))) {
          into[place] = from[left++] as number;
        } else {
          if (left < middle) meets?.(from[right] as number, from, left, middle - left);
          into[place] = from[right++] as number;
        }
      }
    }
    [from, into] = [into, from];
  }
  return from;
}
