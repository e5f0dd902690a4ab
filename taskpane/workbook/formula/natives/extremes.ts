import { type ArrayValueObject, type BaseValueObject, NumberValueObject } from '../../engine/formula.js';
import { engineClass, type FunctionClass } from './engineClass.js';

/** Where nothing fits, the engine answers with an array that has no place, or with a number without end. */
function orZero(value: BaseValueObject): BaseValueObject {
  const found = value.isNumber() && Number.isFinite(value.getValue());
  return found || value.isError() ? value : NumberValueObject.create(0);
}

const isEmpty = (array: ArrayValueObject): boolean => !array.getArrayValue()?.[0]?.[0];

/**
 * MAXIFS and MINIFS.
 * What: `=MAXIFS(B1:B5,C1:C5,"z")` where nothing fits. Expected: 0 (LibreOffice 7.4; common practice). Got: nothing.
 */
export const extreme = (name: 'MAXIFS' | 'MINIFS'): FunctionClass =>
  class extends engineClass(name) {
    override calculate(...given: BaseValueObject[]): BaseValueObject {
      const found = super.calculate(...given) as BaseValueObject;
      const several = found.isArray() && !isEmpty(found as ArrayValueObject);
      return several ? (found as ArrayValueObject).mapValue(orZero) : orZero(found);
    }
  };
