import type { Nullable } from '../engine/core.js';
import {
  ArrayValueObject,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from '../engine/formula.js';
import { CellError } from './cellError.js';

export type GridValue = number | string | boolean | null | CellError;
export type Matrix = readonly (readonly unknown[])[];

function fromObject(object: Nullable<BaseValueObject>): GridValue {
  if (!object || object.isNull()) return null;
  if (object.isError()) return new CellError(String(object.getValue()), (object as ErrorValueObject).getErrorContent());
  return object.getValue();
}

/** The cells behind one argument; a place left empty between two separators is null. */
export function toMatrix(argument: BaseValueObject): GridValue[][] | null {
  if (argument.isNull()) return null;
  if (!argument.isArray()) return [[fromObject(argument)]];
  const array = argument as ArrayValueObject;
  const cells = array.getArrayValue();
  return Array.from({ length: array.getRowCount() }, (_, row) =>
    Array.from({ length: array.getColumnCount() }, (_, column) => fromObject(cells[row]?.[column])),
  );
}

export function toObject(value: unknown): BaseValueObject {
  if (value instanceof CellError) return ErrorValueObject.create(value.code as ErrorType, value.message);
  if (typeof value === 'number') {
    return Number.isFinite(value) ? NumberValueObject.create(value) : ErrorValueObject.create(ErrorType.NUM);
  }
  if (typeof value === 'boolean') return BooleanValueObject.create(value);
  // An absent value would show as 0; an empty text shows as nothing.
  return StringValueObject.create(value === null || value === undefined ? '' : String(value));
}

/** One value stays a value, so that it can stand inside any other formula; more than one spills. */
export function fromMatrix(matrix: Matrix): BaseValueObject {
  const rowCount = matrix.length;
  const columnCount = matrix[0]?.length ?? 0;
  if (rowCount === 1 && columnCount === 1) return toObject(matrix[0]?.[0]);
  return ArrayValueObject.create({
    calculateValueList: matrix.map((row) => row.map(toObject)),
    rowCount,
    columnCount,
    unitId: '',
    sheetId: '',
    row: -1,
    column: -1,
  });
}
