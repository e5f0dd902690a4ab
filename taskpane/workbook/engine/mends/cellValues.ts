import { CellValueType, type ICellData } from '../core.js';
import { BaseReferenceObject, type BaseValueObject, NumberValueObject, StringValueObject } from '../formula.js';

const cells = BaseReferenceObject.prototype;

/** The engine's own way. */
export const bareCellValue = cells.getCellValueObject;

/**
 * What formulas read of a cell.
 * What: a text `#N/A`; a number in a cell with the format of texts. Expected: the text; the number (ECMA-376 part 1, 18.3.1.4:
 * the kind of a cell's value is its own, whatever its format). Got: an error; a text, which sums leave out.
 */
export function mendCellValues(): void {
  cells.getCellValueObject = function (this: BaseReferenceObject, cell: ICellData): BaseValueObject {
    const { v, t, p } = cell;
    if (t === CellValueType.FORCE_STRING && typeof v === 'string' && !p) return StringValueObject.create(v);
    const read = bareCellValue.call(this, cell);
    return t === CellValueType.NUMBER && read.isString() ? NumberValueObject.create(Number(v)) : read;
  };
}
