import { combine, placeIn, shapeOf } from '../../functions/combine.js';
import type { CellContent } from '../host/host.js';
import { CellError } from '../workbook/formula/cellError.js';
import { Unknown } from './unknown.js';

export type Scalar = CellContent | CellError;
export type Matrix = readonly (readonly Scalar[])[];

const OPERATIONS: Readonly<Record<string, (one: number, other: number) => number>> = {
  '+': (one, other) => one + other,
  '-': (one, other) => one - other,
  '*': (one, other) => one * other,
  '/': (one, other) => one / other,
  '^': (one, other) => one ** other,
};

function numeric(
  operate: (one: number, other: number) => number,
  divides: boolean,
  one: Scalar,
  other: Scalar,
): Scalar {
  if (one instanceof CellError) return one;
  if (other instanceof CellError) return other;
  // Whether a text counts as a number is a matter of the workbook's country; a text here is mostly a slip.
  if (typeof one === 'string' || typeof other === 'string') return new CellError('#VALUE!', '');
  if (divides && Number(other) === 0) return new CellError('#DIV/0!', '');
  const result = operate(Number(one), Number(other));
  return Number.isFinite(result) ? result : new CellError('#NUM!', '');
}

const written = (value: Exclude<Scalar, CellError>): string => {
  if (typeof value === 'number') return String(Number(value.toPrecision(15)));
  return typeof value === 'boolean' ? String(value).toUpperCase() : (value ?? '');
};

const joined = (one: Scalar, other: Scalar): Scalar => {
  if (one instanceof CellError) return one;
  return other instanceof CellError ? other : written(one) + written(other);
};

/** Simple arithmetic over cells, rows, columns and grids, as the worksheet combines them. */
export function arithmetic(operator: string, left: Matrix, right: Matrix): Matrix | Unknown {
  const operate = OPERATIONS[operator];
  if (!operate && operator !== '&') return new Unknown('operator', operator);
  const shapes = [shapeOf(left), shapeOf(right)] as const;
  const { rows, columns } = combine(shapes);
  const cell = (matrix: Matrix, shape: (typeof shapes)[number], row: number, column: number): Scalar => {
    const place = placeIn(shape, row, column);
    if (place < 0) return new CellError('#N/A', '');
    return matrix[Math.floor(place / shape.columns)]?.[place % shape.columns] ?? null;
  };
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (__, column) => {
      const [one, other] = [cell(left, shapes[0], row, column), cell(right, shapes[1], row, column)];
      return operate ? numeric(operate, operator === '/', one, other) : joined(one, other);
    }),
  );
}

/** `65%` is 0.65, to the last digit. */
export const percent = (matrix: Matrix): Matrix =>
  matrix.map((row) => row.map((one) => numeric((a, b) => a / b, true, one, 100)));
