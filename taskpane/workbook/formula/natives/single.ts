import {
  type ArrayValueObject,
  BaseFunction,
  type BaseReferenceObject,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
} from '../../engine/formula.js';
import { within } from '../../engine/within.js';

interface Place {
  readonly row: number;
  readonly column: number;
}

type Given = BaseValueObject | BaseReferenceObject;

/** The place in one row or column that stands beside the formula; the cell itself where the range is one. */
function beside(range: BaseReferenceObject, row: number, column: number): Place | undefined {
  const position = range.getRangePosition();
  const { startRow, endRow, startColumn, endColumn } = position;
  const [isRow, isColumn] = [startRow === endRow, startColumn === endColumn];
  const place = { row: isRow ? startRow : row, column: isColumn ? startColumn : column };
  return (isRow || isColumn) && within(position, place.row, place.column) ? place : undefined;
}

/**
 * SINGLE: the one value of a range or an array that a formula of the older kind reads, where a range stood for the cell
 * beside the formula. Files have it as a function younger than their format ([MS-XLSX], 2.2.3); the engine knows it not.
 */
export class Single extends BaseFunction {
  override minParams = 1;
  override maxParams = 1;
  override needsReferenceObject = true;

  override calculate(given: Given): Given {
    if (given.isReferenceObject()) {
      const range = given as BaseReferenceObject;
      const { row, column } = beside(range, this.row, this.column) ?? {};
      if (row === undefined || column === undefined) return ErrorValueObject.create(ErrorType.VALUE);
      return this.createReferenceObject(range, { startRow: row, endRow: row, startColumn: column, endColumn: column });
    }
    const value = given as BaseValueObject;
    return value.isArray() ? (value as ArrayValueObject).getFirstCell() : value;
  }
}
