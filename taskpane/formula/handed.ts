import { parametersOf } from '../../functions/parameters.js';
import { type Handed, isOneCell } from '../../src/core/evaluate.js';
import type { Cell, Inputs, PlanCells } from '../../src/core/input.js';
import type { Matrix } from './arithmetic.js';

const inReadingOrder = (matrix: Matrix): readonly Cell[] => matrix.flat() as Cell[];

/**
 * The arguments of a call as the library takes them. Only for a call that the worksheet function itself answered,
 * so that no error cell and no range in a one-cell input is left.
 */
export function handedBy(inputs: Inputs, given: readonly (Matrix | null)[]): Readonly<Record<string, Handed>> {
  const handed: Record<string, Handed> = {};
  for (const [index, { key, input, column }] of parametersOf(inputs).entries()) {
    const matrix = given[index];
    if (!matrix) continue;
    if (isOneCell(input)) handed[key] = matrix[0]?.[0] as Cell;
    else if (input.kind !== 'plan') handed[key] = inReadingOrder(matrix);
    else if (column === undefined) handed[key] = { labels: inReadingOrder(matrix), columns: {} };
    else Object.assign((handed[key] as PlanCells).columns, { [column]: inReadingOrder(matrix) });
  }
  return handed;
}
