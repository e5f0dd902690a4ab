import type { Calculation } from '../src/core/calculation.js';
import { answer, isNoAnswer } from '../src/core/evaluate.js';
import type { Output } from '../src/core/output.js';
import { present, tooLarge } from '../src/core/present.js';
import { isRefused } from '../src/core/read.js';
import { definition, type UnitDefinition } from '../src/core/units.js';
import type { Answers } from './answers.js';
import { fillColumn } from './column.js';
import { covers, outside, placeIn, type Shape } from './combine.js';
import { recordOf, type Values } from './record.js';
import type { Spread } from './spread.js';

/** The error that stands at one place before anything is calculated: an error cell that came in first, then a refusal. */
export function problemAt<E>(
  spreads: readonly Spread<E>[],
  row: number,
  column: number,
  answers: Answers<E>,
): E | undefined {
  let refusal: E | undefined;
  for (const { label, shape, errorCells, refusals } of spreads) {
    const place = placeIn(shape, row, column);
    if (place < 0) return answers.none(outside(label, shape));
    if (errorCells?.[place] !== undefined) return errorCells[place];
    refusal ??= refusals?.[place];
  }
  return refusal;
}

/**
 * Answers every place of the combined shape. One record is handed to `compute` again and again: only what
 * varies is written anew, so that a column costs little more than its arithmetic.
 */
export function fill<E>(
  calculation: Calculation,
  fixed: Values,
  spreads: readonly Spread<E>[],
  shape: Shape,
  answers: Answers<E>,
): unknown[][] {
  const record = recordFor(calculation, fixed, spreads);
  const varying = spreads.filter((one) => one.values.length > 1);
  const careful = spreads.some((one) => one.errorCells || one.refusals || !covers(one.shape, shape));
  const converter = converterOf(calculation.output);
  if (!careful && converter && !calculation.refuse && shape.columns === 1 && varying.length > 0) {
    const other = (result: unknown) => oneAnswer(calculation, result, converter, answers);
    return fillColumn(calculation, record, varying, shape.rows, converter, other);
  }
  const wide = calculation.output.kind === 'row';
  const rows = new Array<unknown[]>(shape.rows);
  for (let row = 0; row < shape.rows; row++) {
    // A row is made at its full length: growing one by one would reserve many times the memory.
    const cells = new Array<unknown>(wide ? 0 : shape.columns);
    for (let column = 0; column < shape.columns; column++) {
      const problem = careful ? problemAt(spreads, row, column, answers) : undefined;
      if (problem === undefined) {
        for (let i = 0; i < varying.length; i++) {
          const one = varying[i] as Spread<E>;
          record[one.key] = one.values[row * one.rowStep + column * one.columnStep];
        }
      }
      if (wide) rows[row] = rowCells(calculation, record, problem, answers);
      else cells[column] = problem ?? oneAnswer(calculation, answer(calculation, record), converter, answers);
    }
    if (!wide) rows[row] = cells;
  }
  return rows;
}

/** The calculation's record, every key in declared order with this call's fixed and first values. */
function recordFor<E>(calculation: Calculation, fixed: Values, spreads: readonly Spread<E>[]): Values {
  const first = new Map(spreads.map(({ key, values }) => [key, values[0]]));
  const record = recordOf(calculation);
  for (const key of Object.keys(calculation.inputs)) record[key] = first.has(key) ? first.get(key) : fixed[key];
  return record;
}

const errorOf = <E>(result: unknown, answers: Answers<E>): E | undefined =>
  isRefused(result) ? answers.refused(result.refused) : isNoAnswer(result) ? answers.none(result.none) : undefined;

/** The way from SI to the answer's unit, looked up once for a whole column. */
const converterOf = (output: Output): UnitDefinition | undefined =>
  output.kind === 'number' ? definition(output.unit) : undefined;

function oneAnswer<E>(
  { output }: Calculation,
  result: unknown,
  unit: UnitDefinition | undefined,
  answers: Answers<E>,
): unknown {
  if (typeof result !== 'number' || unit === undefined || output.kind !== 'number')
    return errorOf(result, answers) ?? result;
  const shown = (result * unit.down) / unit.up - unit.offset + 0;
  return Number.isFinite(shown) ? shown : answers.none(tooLarge(output.label).none);
}

/** The fields of a row output side by side; a problem stands in each of them. */
function rowCells<E>(calculation: Calculation, record: Values, problem: E | undefined, answers: Answers<E>): unknown[] {
  const result = problem === undefined ? answer(calculation, record) : undefined;
  const error = problem ?? errorOf(result, answers);
  if (error !== undefined) {
    const width = calculation.output.kind === 'row' ? Object.keys(calculation.output.fields).length : 1;
    return new Array<unknown>(width).fill(error);
  }
  const [shown = []] = present(calculation.output, result);
  return shown.map((cell) => (isNoAnswer(cell) ? answers.none(cell.none) : cell));
}
