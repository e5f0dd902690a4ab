import { type ArrayValueObject, type BaseValueObject, ErrorType, ErrorValueObject } from '../../engine/formula.js';
import { engineClass } from './engineClass.js';

function sizeOf(value: BaseValueObject): string {
  const array = value as ArrayValueObject;
  return value.isArray() ? `${array.getRowCount()} × ${array.getColumnCount()}` : '1 × 1';
}

/**
 * SUMPRODUCT.
 * What: `=SUMPRODUCT(A1:A2,B1:B5)`. Expected: #VALUE!, the arrays being of unlike size (ECMA-376 part 1, 18.17.7.318;
 * OpenFormula 1.2, 6.16.63). Got: a sum over what they share.
 */
export class SumProduct extends engineClass('SUMPRODUCT') {
  override calculate(...given: BaseValueObject[]) {
    const error = given.find((one) => one.isError());
    if (error) return error;
    if (new Set(given.map(sizeOf)).size > 1) return ErrorValueObject.create(ErrorType.VALUE);
    return super.calculate(...given);
  }
}
