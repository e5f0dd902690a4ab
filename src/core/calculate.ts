import type { Calculation } from './calculation.js';
import { answer, handOver, isNoAnswer, readCells } from './evaluate.js';
import type { Given, Inputs } from './input.js';
import type { Estimate, Field, Fields, NoAnswer, Output, Refused, Result } from './output.js';
import { presentFigure, presentNumber } from './present.js';
import { isRefused } from './read.js';

type Figures = Readonly<Record<string, unknown>>;

function ownField(field: Field, value: unknown): unknown | NoAnswer {
  if ('text' in field || value === undefined) return value;
  if (!field.error) return presentFigure(field, value as number);
  const estimate = value as Estimate;
  const shown = presentFigure(field, estimate.value);
  if (isNoAnswer(shown) || estimate.error === undefined)
    return isNoAnswer(shown) ? shown : { ...estimate, value: shown };
  const error = presentFigure(field, estimate.error);
  return isNoAnswer(error) ? error : { value: shown, error };
}

function ownRow(fields: Fields, row: Figures): Figures | NoAnswer {
  const own: Record<string, unknown> = {};
  for (const [key, field] of Object.entries(fields)) {
    const value = ownField(field, row[key]);
    if (isNoAnswer(value)) return value;
    own[key] = value;
  }
  return own;
}

/** A result of `compute` in the units that the output declares; one figure beyond all numbers and there is no answer. */
function inOwnUnits(output: Output, result: unknown): unknown | NoAnswer {
  if (output.kind === 'number') return presentNumber(result as number, output.unit, output.label);
  if (output.kind === 'text' || output.kind === 'column') return result;
  if (output.kind !== 'table') return ownRow(output.fields, result as Figures);
  const rows = (result as readonly Figures[]).map((row) => ownRow(output.fields, row));
  return rows.find(isNoAnswer) ?? rows;
}

/**
 * Evaluates one case of a calculation for a program: figures in, figures out.
 *
 * @param calculation one of the catalogue, such as `dryMass` or `runReport`.
 * @param given one value an input, by the input's key: a number in the input's own unit (`inputs.mass.unit`), a text, an
 * array of numbers for a series, and for a plan a record of columns, each a record from label to number. What has a
 * preset may be left out.
 * @returns by the kind of the output: a `number` or `text` as such, a `column` as an array of texts, a `row` or `report`
 * as a record by the output's field keys, a `table` as an array of such records. Numbers are in the units that the output
 * declares and always finite; a figure that the case does not have is undefined; a fitted figure is a value with its
 * standard error. `{ refused }` says which input was wrong, its limits, its unit and what was given; `{ none }` says why
 * no answer exists. Values of these types never make it throw.
 */
export function calculate<I extends Inputs, O extends Output>(
  calculation: Calculation<I, O>,
  given: Given<I>,
): Result<O> | NoAnswer | Refused {
  const plain = calculation as unknown as Calculation;
  const si = readCells(plain, handOver(plain.inputs, given as never));
  if (isRefused(si)) return si;
  const result = answer(plain, si);
  return (isRefused(result) || isNoAnswer(result) ? result : inOwnUnits(plain.output, result)) as Result<O>;
}
