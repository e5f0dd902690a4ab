/** Rows in the order of their values; equal ones as they stand. */
export const orderOf = (values: Float64Array): Uint32Array =>
  Uint32Array.from(values, (_, row) => row).sort(
    (one, other) => (values[one] as number) - (values[other] as number) || one - other,
  );
