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
