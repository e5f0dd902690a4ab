import type { ArrayValueObject, BaseValueObject } from '../../engine/formula.js';
import { engineClass } from './engineClass.js';

const oneOf = (value: BaseValueObject): BaseValueObject => {
  const array = value as ArrayValueObject;
  return value.isArray() && array.getRowCount() === 1 && array.getColumnCount() === 1 ? array.getFirstCell() : value;
};

/**
 * WORKDAY.INTL.
 * What: `=WORKDAY.INTL(A1,10,7)` where A1 holds 1 January 2025. Expected: 15 January 2025 (ECMA-376 part 1, 18.17.7.352;
 * LibreOffice 7.4). Got: 12, as if the cell held 0; a date in the formula itself is read.
 */
export class WorkdayInternational extends engineClass('WORKDAY.INTL') {
  override calculate(start: BaseValueObject, days: BaseValueObject, ...rest: BaseValueObject[]) {
    return super.calculate(oneOf(start), oneOf(days), ...rest);
  }
}
