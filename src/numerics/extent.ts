/** The least and the most of some numbers, and what lies between. */
export function extent(values: ArrayLike<number>): {
  readonly least: number;
  readonly most: number;
  readonly span: number;
} {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < values.length; i++) {
    const one = values[i] as number;
    if (one < least) least = one;
    if (one > most) most = one;
  }
  return { least, most, span: most - least };
}

/** Residuals smaller than this share of the largest value are the rounding of a curve through every point. */
const ROUNDING = 1e-12;

/** What a curve leaves of some values; nothing at all where that is rounding alone. */
export function beyondRounding(residuals: Float64Array, values: ArrayLike<number>): Float64Array {
  const { least, most } = extent(values);
  const size = ROUNDING * Math.max(Math.abs(least), Math.abs(most));
  return residuals.every((one) => Math.abs(one) <= size) ? new Float64Array(residuals.length) : residuals;
}
