import {
  BaseFunction,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
} from '../../engine/formula.js';
import { DAY, dateOf } from '../serialDate.js';
import { elementwise } from './elementwise.js';

/** The week that a day's Thursday is in, counted in that Thursday's year: ISO 8601. */
function weekOf(serial: number): number {
  const date = dateOf(serial);
  const thursday = date.getTime() + (3 - ((date.getUTCDay() + 6) % 7)) * DAY;
  const firstOfYear = Date.UTC(new Date(thursday).getUTCFullYear(), 0, 1);
  return Math.floor((thursday - firstOfYear) / (7 * DAY)) + 1;
}

/**
 * ISOWEEKNUM.
 * What: `=ISOWEEKNUM(DATE(2025,12,31))`. Expected: 1, as its Thursday is 1 January 2026 (ISO 8601). Got: 53.
 */
export class IsoWeek extends BaseFunction {
  override minParams = 1;
  override maxParams = 1;

  override calculate(day: BaseValueObject): BaseValueObject {
    return elementwise(day, day, (one) => {
      const given = one.convertToNumberObjectValue();
      if (given.isError()) return given;
      const serial = Number(given.getValue());
      return serial < 0 ? ErrorValueObject.create(ErrorType.NUM) : NumberValueObject.create(weekOf(serial));
    });
  }
}
