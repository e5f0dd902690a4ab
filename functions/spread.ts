import type { OneCellInput } from '../src/core/input.js';
import { isMemorable } from '../src/core/names.js';
import { isRefused, readCell } from '../src/core/read.js';
import { definition } from '../src/core/units.js';
import type { Answers } from './answers.js';
import { type Matrix, unwrap } from './cells.js';
import { cellsOf, type Shape, shapeOf } from './combine.js';

/** One input over its whole range, read once: numbers in SI, and an error object wherever a cell does not serve. */
export interface Spread<E> {
  readonly key: string;
  readonly label: string;
  readonly shape: Shape;
  /** How far one row, and one column, of the answer moves on in `values`: 0 where the range has but one. */
  readonly rowStep: number;
  readonly columnStep: number;
  readonly values: Float64Array | unknown[];
  /** By place: error cells that came in, and errors for cells that were refused. Both are rare, so both may be absent. */
  errorCells: (E | undefined)[] | undefined;
  refusals: (E | undefined)[] | undefined;
}

/** Reads a range of one-cell inputs. The common case, a number within its limits, takes the short way. */
export function readSpread<E>(key: string, input: OneCellInput, matrix: Matrix, answers: Answers<E>): Spread<E> {
  const shape = shapeOf(matrix);
  const number = input.kind === 'number';
  const values = number ? new Float64Array(cellsOf(shape)) : new Array<unknown>(cellsOf(shape));
  const spread: Spread<E> = {
    key,
    label: input.label,
    shape,
    rowStep: shape.rows === 1 ? 0 : shape.columns,
    columnStep: shape.columns === 1 ? 0 : 1,
    values,
    errorCells: undefined,
    refusals: undefined,
  };
  const [least, most] = number ? input.limit : [1, 0];
  const { up, down, offset } = definition(number ? input.unit : '');
  const refusals = new Map<unknown, E>();
  let place = 0;
  for (const row of matrix) {
    for (let column = 0; column < shape.columns; column++, place++) {
      const raw = row[column];
      if (typeof raw === 'number' && raw >= least && raw <= most) values[place] = ((raw + offset) * up) / down;
      else readSlowly(spread, place, input, raw, answers, refusals);
    }
  }
  return spread;
}

function readSlowly<E>(
  spread: Spread<E>,
  place: number,
  input: OneCellInput,
  raw: unknown,
  answers: Answers<E>,
  refusals: Map<unknown, E>,
): void {
  const known = refusals.get(raw);
  if (known !== undefined) {
    spread.refusals = withError(spread.refusals, spread, place, known);
    return;
  }
  const cell = unwrap(raw, answers);
  if (answers.isError(cell)) {
    spread.errorCells = withError(spread.errorCells, spread, place, cell);
    return;
  }
  const value = readCell(input, cell as never);
  if (!isRefused(value)) {
    spread.values[place] = value as never;
    return;
  }
  const refusal = answers.refused(value.refused);
  if (isMemorable(raw)) refusals.set(raw, refusal);
  spread.refusals = withError(spread.refusals, spread, place, refusal);
}

/** The errors of a range by place, made at the first of them. */
function withError<E>(
  errors: (E | undefined)[] | undefined,
  { shape }: Spread<E>,
  place: number,
  error: E,
): (E | undefined)[] {
  const held = errors ?? new Array<E | undefined>(cellsOf(shape));
  held[place] = error;
  return held;
}
