import { bindAll } from '../../functions/bind.js';

/** What a cell shows where it has no value. */
export interface CellError {
  readonly code: '#VALUE!' | '#N/A' | string;
  readonly message: string;
}

class ErrorCell implements CellError {
  constructor(
    readonly code: string,
    readonly message: string,
  ) {}
}

const functions = bindAll<ErrorCell>({
  refused: (message) => new ErrorCell('#VALUE!', message),
  none: (message) => new ErrorCell('#N/A', message),
  error: (code) => new ErrorCell(code, ''),
  isError: (value): value is ErrorCell => value instanceof ErrorCell,
});

type Argument = number | string | null | readonly (number | string | null)[];

/** Calls a function as the worksheet does: a single value as one cell, a list as a column, null as omitted. */
export function call(id: string, ...args: readonly Argument[]): unknown {
  const called = functions.get(id);
  if (!called) throw new Error(`${id} is no worksheet function.`);
  return called(
    ...args.map((one) => (one === null ? null : Array.isArray(one) ? one.map((cell) => [cell]) : [[one]])),
    {},
  );
}

/** The one value of a call, or the error that stands in its place. */
export const cell = (id: string, ...args: readonly Argument[]): number | string | CellError => {
  const answer = call(id, ...args);
  return Array.isArray(answer) ? answer[0][0] : (answer as CellError);
};

/** The sentence of a refused or unanswerable call, with its code in front. */
export const sentence = (id: string, ...args: readonly Argument[]): string => {
  const answer = cell(id, ...args);
  return typeof answer === 'object' ? `${answer.code} ${answer.message}` : `answered ${answer}`;
};
