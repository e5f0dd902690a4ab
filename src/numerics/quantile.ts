/**
 * The value below which a share of a sample lies, interpolated between neighbours as worksheets do it
 * (PERCENTILE.INC; Hyndman and Fan's type 7).
 * @param sorted ascending, at least one value.
 */
export function quantile(sorted: Float64Array, share: number): number {
  const place = share * (sorted.length - 1);
  const before = Math.floor(place);
  const low = sorted[before] as number;
  const high = sorted[Math.min(before + 1, sorted.length - 1)] as number;
  return low + (place - before) * (high - low);
}
