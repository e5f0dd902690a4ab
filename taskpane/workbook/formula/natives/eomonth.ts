import { type BaseValueObject, NumberValueObject } from '../../engine/formula.js';
import { elementwise } from './elementwise.js';
import { engineClass } from './engineClass.js';

/**
 * EOMONTH.
 * What: `=EOMONTH(DATE(2025,1,1),-1.5)`. Expected: 31 December 2024, months being truncated (OpenFormula 1.2, 6.10.9).
 * Got: 30 November 2024.
 */
export class Eomonth extends engineClass('EOMONTH') {
  override calculate(start: BaseValueObject, months: BaseValueObject) {
    const whole = elementwise(months, months, (one) =>
      one.isNumber() ? NumberValueObject.create(Math.trunc(Number(one.getValue()))) : one,
    );
    return super.calculate(start, whole);
  }
}
