import {
  BaseFunction,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
} from '../../engine/formula.js';
import { dateOf, LATEST, serialOf } from '../serialDate.js';
import { elementwise } from './elementwise.js';

function moved(start: number, months: number): number {
  const date = dateOf(start);
  const year = date.getUTCFullYear();
  const month = date.getUTCMonth() + Math.trunc(months);
  const lastDay = new Date(Date.UTC(year, month + 1, 0)).getUTCDate();
  return serialOf(Date.UTC(year, month, Math.min(date.getUTCDate(), lastDay)));
}

/**
 * EDATE.
 * What: `=EDATE(DATE(2025,1,31),1)`. Expected: 28 February 2025, the last day where the month is shorter (ECMA-376 part 1,
 * 18.17.7.98; OpenFormula 6.10.8). Got: 3 March 2025.
 */
export class Edate extends BaseFunction {
  override minParams = 2;
  override maxParams = 2;

  override calculate(start: BaseValueObject, months: BaseValueObject): BaseValueObject {
    return elementwise(start, months, (one, other) => {
      if (one.isBoolean() || other.isBoolean()) return ErrorValueObject.create(ErrorType.VALUE);
      const [from, by] = [one.convertToNumberObjectValue(), other.convertToNumberObjectValue()];
      if (from.isError()) return from;
      if (by.isError()) return by;
      const serial = moved(Number(from.getValue()), Number(by.getValue()));
      const outside = Number(from.getValue()) < 0 || !(serial >= 0 && serial <= LATEST);
      if (outside) return ErrorValueObject.create(ErrorType.NUM);
      return NumberValueObject.create(serial, one.getPattern() || 'yyyy/mm/dd;@');
    });
  }
}
