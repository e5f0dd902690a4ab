import type { Calculation } from '../src/core/calculation.js';
import type { UnitDefinition } from '../src/core/units.js';
import type { Values } from './record.js';
import type { Spread } from './spread.js';

/**
 * The common case, one column in and one column out with every cell in order, without a look-up in the loop.
 * @param other what stands in a place where `compute` gave no number, or one that no cell can hold.
 */
export function fillColumn<E>(
  calculation: Calculation,
  record: Values,
  varying: readonly Spread<E>[],
  rows: number,
  { up, down, offset }: UnitDefinition,
  other: (result: unknown) => unknown,
): unknown[][] {
  const answers = new Array<unknown[]>(rows);
  const keys = varying.map(({ key }) => key);
  const columns = varying.map(({ values }) => values);
  const [firstKey, firstColumn] = [keys[0] as string, columns[0] as Float64Array];
  const [secondKey, secondColumn] = [keys[1] as string, columns[1] as Float64Array | undefined];
  for (let row = 0; row < rows; row++) {
    record[firstKey] = firstColumn[row];
    if (secondColumn) record[secondKey] = secondColumn[row];
    for (let i = 2; i < keys.length; i++) record[keys[i] as string] = (columns[i] as Float64Array)[row];
    const result: unknown = calculation.compute(record as never);
    const shown = typeof result === 'number' ? (result * down) / up - offset + 0 : Number.NaN;
    // Two literals, so that rows of numbers stay arrays of plain doubles.
    answers[row] = Number.isFinite(shown) ? [shown] : [other(result)];
  }
  return answers;
}
