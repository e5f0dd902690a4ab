import type { Calculation } from './calculation.js';
import type { Cell, Given, Input, Inputs, OneCellInput, PlanCells } from './input.js';
import type { NoAnswer, Output, Refused } from './output.js';
import { readPlan } from './plan.js';
import { type AnswerCell, present } from './present.js';
import { isRefused, readCell, readOmitted, refused } from './read.js';
import { type Column, readSeries } from './series.js';

/** What a worksheet shows: rows of cells, always rectangular; one number or text is one row of one cell. */
export type Answer = readonly (readonly AnswerCell[])[];

export const isOneCell = (input: Input): input is OneCellInput =>
  input.kind === 'number' || input.kind === 'choice' || input.kind === 'text' || input.kind === 'cell';

/** Whether a calculation found that no answer exists; `none` then says why. */
export const isNoAnswer = (value: unknown): value is NoAnswer =>
  typeof value === 'object' && value !== null && 'none' in value;

/** What one input was handed: a cell, a column of cells, or a plan's labels and columns. */
export type Handed = Cell | undefined | readonly Cell[] | PlanCells;

/** Reads the inputs that take a whole range: series and names together, then the plans. */
export function readWhole(
  { inputs }: Pick<Calculation, 'inputs'>,
  handed: Readonly<Record<string, Handed | Float64Array>>,
): Record<string, unknown> | Refused {
  const whole: [string, Extract<Input, { kind: 'series' | 'names' }>][] = [];
  for (const [key, input] of Object.entries(inputs)) {
    if (input.kind === 'series' || input.kind === 'names') whole.push([key, input]);
  }
  const values: Record<string, unknown> | Refused =
    whole.length > 0 ? readSeries(whole, handed as Record<string, Column>) : {};
  if (isRefused(values)) return values;
  for (const [key, input] of Object.entries(inputs)) {
    if (input.kind !== 'plan') continue;
    const cells = handed[key] as PlanCells | undefined;
    if (cells === undefined) return refused(`${input.label} must be a range of labels, but nothing was given.`);
    const plans = readPlan(input, cells);
    if (isRefused(plans)) return plans;
    values[key] = plans;
  }
  return values;
}

/** Rules between inputs, then the formula, then a finite answer: all after reading. */
export function answer(calculation: Calculation, si: Readonly<Record<string, unknown>>): unknown | NoAnswer | Refused {
  const refusal = calculation.refuse?.(si as never);
  return refusal === undefined ? calculation.compute(si as never) : refused(refusal);
}

/** Reads every input of one case: values in SI by key, or the first refusal. */
export function readCells(
  calculation: Pick<Calculation, 'inputs'>,
  given: Readonly<Record<string, Handed>>,
): Record<string, unknown> | Refused {
  const si: Record<string, unknown> | Refused = readWhole(calculation, given);
  if (isRefused(si)) return si;
  for (const [key, input] of Object.entries(calculation.inputs)) {
    if (!isOneCell(input)) continue;
    const handed = given[key] as Cell | undefined;
    const value = handed === undefined ? readOmitted(input) : readCell(input, handed);
    if (isRefused(value)) return value;
    si[key] = value;
  }
  return si;
}

/**
 * Evaluates one case of a calculation.
 * @param given one value an input, numbers in the input's own unit; text, blanks and the like are refused as in a cell.
 * A plan is handed over as labels and columns of cells.
 * @returns the answer's cells in the answer's unit, or the refusal, or why there is no answer. Never throws.
 */
export function evaluateCells(
  calculation: Calculation,
  given: Readonly<Record<string, Handed>>,
): Answer | NoAnswer | Refused {
  const si = readCells(calculation, given);
  if (isRefused(si)) return si;
  const result = answer(calculation, si);
  return isRefused(result) || isNoAnswer(result) ? result : present(calculation.output, result);
}

/**
 * `evaluateCells` with what is given checked by the compiler, and a plan given as a record of columns, each a record from
 * label to value. Answers the cells that the worksheet shows; `calculate` answers figures by their keys instead.
 */
export function evaluate<I extends Inputs, O extends Output>(
  calculation: Calculation<I, O>,
  given: Given<I>,
): Answer | NoAnswer | Refused {
  return evaluateCells(calculation as unknown as Calculation, handOver(calculation.inputs, given as never));
}

/**
 * Turns what a program gives into what a worksheet hands over: a plan's record becomes labels and columns, and an array
 * of the program's own is copied, since a column that is handed over is turned into SI where it stands.
 */
export function handOver(inputs: Inputs, given: Readonly<Record<string, unknown>>): Readonly<Record<string, Handed>> {
  const handed: Record<string, Handed> = {};
  for (const [key, input] of Object.entries(inputs)) {
    const value = given[key];
    if (input.kind === 'plan' && value) handed[key] = planCells(value as never);
    else handed[key] = value instanceof Float64Array ? Array.from(value) : (value as Handed);
  }
  return handed;
}

function planCells(columns: Readonly<Record<string, Readonly<Record<string, number>>>>): PlanCells {
  const labels = [...new Set(Object.values(columns).flatMap((column) => Object.keys(column)))];
  const cells = (column: Readonly<Record<string, number>>) => labels.map((label) => column[label] ?? null);
  return { labels, columns: Object.fromEntries(Object.entries(columns).map(([key, column]) => [key, cells(column)])) };
}
