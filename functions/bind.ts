import { catalogue } from '../src/catalogue.js';
import type { Calculation } from '../src/core/calculation.js';
import type { Handed } from '../src/core/evaluate.js';
import { answer, isNoAnswer, isOneCell, readWhole } from '../src/core/evaluate.js';
import type { OneCellInput, PlanCells } from '../src/core/input.js';
import { type AnswerCell, present } from '../src/core/present.js';
import { isRefused, readOmitted } from '../src/core/read.js';
import { type Answers, sharing } from './answers.js';
import { allNumbers, isInvocation, type Matrix, matrixOf, readingOrder } from './cells.js';
import { cellsOf, combine, shapeOf, tooLarge } from './combine.js';
import { fill, problemAt } from './fill.js';
import { oneCellCall } from './oneCell.js';
import { type Parameter, parametersOf } from './parameters.js';
import { readSpread, type Spread } from './spread.js';

/** A worksheet function: matrices of the host's cell values in, a matrix or one error out. Never throws. */
export type WorksheetFunction = (...args: readonly unknown[]) => unknown;

interface Read<E> {
  /** Values that hold for every place, in SI. */
  readonly fixed: Record<string, unknown>;
  readonly spreads: readonly Spread<E>[];
}

/** Binds one calculation to a host's way of saying errors. */
export function bind<E>(calculation: Calculation, answers: Answers<E>): WorksheetFunction {
  const parameters = parametersOf(calculation.inputs);
  const quick = oneCellCall(calculation, parameters);
  return (...args) => {
    try {
      return (
        quick(args) ??
        call(
          calculation,
          parameters,
          args.length > 0 && isInvocation(args.at(-1)) ? args.slice(0, -1) : args,
          sharing(answers),
        )
      );
    } catch (cause) {
      const detail = cause instanceof Error ? cause.message : String(cause);
      return answers.refused(`POWDER.${calculation.id} failed: ${detail}. Please report this with the formula.`);
    }
  };
}

/** Every worksheet function by its id, without the namespace. */
export function bindAll<E>(answers: Answers<E>): ReadonlyMap<string, WorksheetFunction> {
  return new Map(catalogue.map((one) => [one.id, bind(one, answers)]));
}

function call<E>(
  calculation: Calculation,
  parameters: readonly Parameter[],
  args: readonly unknown[],
  answers: Answers<E>,
): unknown {
  const whole = wholeInputs(calculation, parameters, args, answers);
  if ('error' in whole) return whole.error;
  const read = oneCellInputs(calculation, parameters, args, answers);
  if ('error' in read) return read.error;
  Object.assign(read.fixed, whole.values);
  const { kind } = calculation.output;
  if (kind === 'number' || kind === 'text' || kind === 'row') return spreadAnswer(calculation, read, answers);
  return single(calculation, read, answers);
}

/** Series, names and plans: one value each, read before anything spreads. */
function wholeInputs<E>(
  calculation: Calculation,
  parameters: readonly Parameter[],
  args: readonly unknown[],
  answers: Answers<E>,
) {
  const handed: Record<string, Handed | Float64Array> = {};
  for (const [index, { key, input, column }] of parameters.entries()) {
    if (isOneCell(input)) continue;
    const matrix = matrixOf(args[index]);
    if (matrix === undefined) continue;
    const numbers = input.kind === 'series' ? allNumbers(matrix) : undefined;
    if (numbers !== undefined) {
      handed[key] = numbers;
      continue;
    }
    const order = readingOrder(matrix, answers);
    if ('error' in order) return order;
    if (input.kind !== 'plan') handed[key] = order.cells;
    else if (column === undefined) handed[key] = { labels: order.cells, columns: {} };
    else Object.assign((handed[key] as PlanCells | undefined)?.columns ?? {}, { [column]: order.cells });
  }
  const values = readWhole(calculation, handed);
  return isRefused(values) ? { error: answers.refused(values.refused) } : { values };
}

function oneCellInputs<E>(
  { output }: Calculation,
  parameters: readonly Parameter[],
  args: readonly unknown[],
  answers: Answers<E>,
): Read<E> | { error: E } {
  const fixed: Record<string, unknown> = {};
  const spreads: Spread<E>[] = [];
  let omitted: E | undefined;
  for (const [index, { key, input }] of parameters.entries()) {
    if (!isOneCell(input)) continue;
    const matrix = matrixOf(args[index]);
    if (matrix === undefined || matrix.length === 0) {
      const value = readOmitted(input);
      if (isRefused(value)) omitted ??= answers.refused(value.refused);
      else fixed[key] = value;
      continue;
    }
    const refusal = rangeRefusal(output.kind, input, matrix);
    if (refusal) return { error: answers.refused(refusal) };
    spreads.push(readSpread(key, input, matrix, answers));
  }
  return omitted === undefined ? { fixed, spreads } : { error: omitted };
}

/** Where ranges in one-value inputs have no meaning. */
function rangeRefusal(kind: Calculation['output']['kind'], input: OneCellInput, matrix: Matrix): string | undefined {
  const { rows, columns } = shapeOf(matrix);
  if (columns === 0) return `${input.label} is an empty range.`;
  if (kind === 'number' || kind === 'text' || rows * columns === 1) return undefined;
  const given = `a range of ${rows} rows × ${columns} columns was given.`;
  if (kind !== 'row') return `${input.label} takes one cell, but ${given}`;
  return columns > 1 ? `${input.label} takes one cell or one column, but ${given}` : undefined;
}

function spreadAnswer<E>(calculation: Calculation, { fixed, spreads }: Read<E>, answers: Answers<E>): unknown {
  const shape = combine(spreads.map((one) => one.shape));
  const refusal = tooLarge(shape);
  if (refusal) return answers.refused(refusal);
  const filled = fill(calculation, fixed, spreads, shape, answers);
  const [[only]] = filled as [[unknown]];
  return cellsOf(shape) === 1 && filled[0]?.length === 1 && answers.isError(only) ? only : filled;
}

/** Reports and tables: one case, one answer. */
function single<E>(calculation: Calculation, { fixed, spreads }: Read<E>, answers: Answers<E>): unknown {
  const problem = problemAt(spreads, 0, 0, answers);
  if (problem !== undefined) return problem;
  for (const one of spreads) fixed[one.key] = one.values[0];
  const result = answer(calculation, fixed);
  if (isRefused(result)) return answers.refused(result.refused);
  if (isNoAnswer(result)) return answers.none(result.none);
  const cell = (shown: AnswerCell) => (isNoAnswer(shown) ? answers.none(shown.none) : shown);
  return present(calculation.output, result).map((row) => row.map(cell));
}
