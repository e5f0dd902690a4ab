import type { Cell } from '../src/core/input.js';
import type { Answers } from './answers.js';

export type Matrix = readonly (readonly unknown[])[];

/** What an argument was: nothing at all, or a rectangle of the host's cell values. */
export function matrixOf(argument: unknown): Matrix | undefined {
  if (argument === null || argument === undefined) return undefined;
  if (!Array.isArray(argument)) return [[argument]];
  return argument.every(Array.isArray) ? argument : [argument];
}

/** Whether an argument is the invocation object that the host appends, and not a value of the sheet. */
export const isInvocation = (argument: unknown): boolean =>
  typeof argument === 'object' && argument !== null && !Array.isArray(argument) && !('basicValue' in argument);

export const widthOf = (matrix: Matrix): number => {
  let width = 0;
  for (const row of matrix) if (row.length > width) width = row.length;
  return width;
};

interface RichValue {
  readonly type?: unknown;
  readonly basicType?: unknown;
  readonly basicValue?: unknown;
}

/** What sentences quote where a cell holds an entity, a picture or the like. */
const A_DATA_TYPE = 'a data type';

/** Takes the host's wrappings off one cell: blank forms become null, formatted numbers their number. */
export function unwrap<E>(raw: unknown, answers: Answers<E>): Cell | E {
  if (typeof raw === 'number' || typeof raw === 'boolean') return raw;
  if (raw === null || raw === undefined || raw === '') return null;
  if (typeof raw === 'string') return raw;
  if (answers.isError(raw)) return raw;
  if (typeof raw !== 'object') return String(raw);
  const { type, basicType, basicValue } = raw as RichValue;
  // An entity or a picture has the basic type Error too, but is no failed calculation: it is refused with a sentence.
  if (type === 'Error' || (type === undefined && basicType === 'Error')) return errorValue(basicValue, answers);
  if (basicType === 'Error') return A_DATA_TYPE;
  if (typeof basicValue === 'number' || typeof basicValue === 'boolean') return basicValue;
  if (typeof basicValue === 'string') return basicValue === '' ? null : basicValue;
  return basicType === 'Empty' ? null : A_DATA_TYPE;
}

const errorValue = <E>(code: unknown, answers: Answers<E>): E =>
  typeof code === 'string' && code.startsWith('#')
    ? answers.error(code)
    : answers.refused('A cell holds an error value that does not say which.');

/** A whole range of nothing but numbers in reading order; undefined where anything else stands in it. */
export function allNumbers(matrix: Matrix): Float64Array | undefined {
  const width = widthOf(matrix);
  const numbers = new Float64Array(matrix.length * width);
  let place = 0;
  for (const row of matrix) {
    for (let column = 0; column < width; column++) {
      const raw = row[column];
      if (typeof raw !== 'number') return undefined;
      numbers[place++] = raw;
    }
  }
  return numbers;
}

/** A whole range in reading order, unwrapped; an error cell anywhere in it is the whole answer. */
export function readingOrder<E>(matrix: Matrix, answers: Answers<E>): { cells: Cell[] } | { error: E } {
  const width = widthOf(matrix);
  const cells: Cell[] = [];
  for (const row of matrix) {
    for (let column = 0; column < width; column++) {
      const cell = unwrap(row[column], answers);
      if (answers.isError(cell)) return { error: cell };
      cells.push(cell as Cell);
    }
  }
  return { cells };
}
