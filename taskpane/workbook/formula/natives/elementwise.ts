import {
  ArrayValueObject,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  NullValueObject,
} from '../../engine/formula.js';

type Single = (left: BaseValueObject, right: BaseValueObject) => BaseValueObject;

const sizeOf = (value: BaseValueObject): [rows: number, columns: number] => {
  const array = value as ArrayValueObject;
  return value.isArray() ? [array.getRowCount(), array.getColumnCount()] : [1, 1];
};

/** The element at a place: one row or column is repeated, what lies beyond both is not available. */
function elements(value: BaseValueObject): (row: number, column: number) => BaseValueObject {
  if (!value.isArray()) return () => value;
  const array = value as ArrayValueObject;
  const [rows, columns] = sizeOf(value);
  return (row, column) => {
    const r = rows === 1 ? 0 : row;
    const c = columns === 1 ? 0 : column;
    if (r >= rows || c >= columns) return ErrorValueObject.create(ErrorType.NA);
    return array.get(r, c) ?? NullValueObject.create();
  };
}

/** An operation on two values, element by element where either is an array; an error on either side is the answer. */
export function elementwise(left: BaseValueObject, right: BaseValueObject, single: Single): BaseValueObject {
  const checked: Single = (one, other) => (one.isError() ? one : other.isError() ? other : single(one, other));
  if (!left.isArray() && !right.isArray()) return checked(left, right);
  const [leftAt, rightAt] = [elements(left), elements(right)];
  const [[leftRows, leftColumns], [rightRows, rightColumns]] = [sizeOf(left), sizeOf(right)];
  const rowCount = Math.max(leftRows, rightRows);
  const columnCount = Math.max(leftColumns, rightColumns);
  return ArrayValueObject.create({
    calculateValueList: Array.from({ length: rowCount }, (_, row) =>
      Array.from({ length: columnCount }, (_, column) => checked(leftAt(row, column), rightAt(row, column))),
    ),
    rowCount,
    columnCount,
    unitId: '',
    sheetId: '',
    row: -1,
    column: -1,
  });
}
