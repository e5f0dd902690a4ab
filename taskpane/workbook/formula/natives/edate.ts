import {
  BaseFunction,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
} from '../../engine/formula.js';
import { elementwise } from './elementwise.js';

export const DAY = 86_400_000;
/** The day 0 of dates from March 1900 on; before, the calendar of spreadsheets has a day less. */
const ZERO = Date.UTC(1899, 11, 30);
const FIRST_OF_MARCH_1900 = 61;
const LATEST = 2_958_465;

export const dateOf = (serial: number): Date =>
  new Date(ZERO + (Math.trunc(serial) + (serial < FIRST_OF_MARCH_1900 ? 1 : 0)) * DAY);

function serialOf(time: number): number {
  const serial = (time - ZERO) / DAY;
  return serial < FIRST_OF_MARCH_1900 ? serial - 1 : serial;
}

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
