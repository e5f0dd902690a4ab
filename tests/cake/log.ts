import { CellError, call } from '../functions/answers.js';

/** A column as a host hands it over. */
export const columnOf = (values: readonly unknown[]): unknown[][] => values.map((one) => [one]);

/** A report by its labels. */
export function reportOf(id: string, ...args: unknown[]): Readonly<Record<string, number>> {
  const answer = call(id, ...args.map((one) => (Array.isArray(one) ? columnOf(one) : one)));
  if (answer instanceof CellError) throw new Error(answer.message);
  return Object.fromEntries(answer as [string, number][]);
}

export const rows = (count: number): number[] => Array.from({ length: count }, (_, row) => row);
