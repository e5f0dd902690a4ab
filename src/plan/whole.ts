/** Why a value is refused where only a whole number has a meaning, or nothing where it serves. */
export const wholeRefusal = (label: string, value: number): string | undefined =>
  Number.isInteger(value) ? undefined : `${label} must be a whole number, but ${value} was given.`;
