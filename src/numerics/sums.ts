type Values = readonly number[] | Float64Array;

export function dot(one: Values, other: Values): number {
  let sum = 0;
  for (let i = 0; i < one.length; i++) sum += (one[i] as number) * (other[i] as number);
  return sum;
}

/** Sum of what each of a list counts for. */
export const total = <T>(list: readonly T[], of: (one: T) => number): number =>
  list.reduce((sum, one) => sum + of(one), 0);

export function mean(values: Values): number {
  let sum = 0;
  for (const one of values) sum += one;
  return sum / values.length;
}

/** Sum of squares about the mean. */
export function spreadOf(values: Values): number {
  const middle = mean(values);
  let sum = 0;
  for (const one of values) sum += (one - middle) ** 2;
  return sum;
}
