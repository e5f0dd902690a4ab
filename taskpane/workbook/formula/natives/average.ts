import type { ArrayValueObject, BaseValueObject } from '../../engine/formula.js';
import { engineClass } from './engineClass.js';

/**
 * AVERAGE.
 * What: `=AVERAGE(H1:H5)` where H1 holds #DIV/0!. Expected: #DIV/0!, the first error (OpenFormula 1.2, 6.3). Got: #VALUE!.
 */
export class Average extends engineClass('AVERAGE') {
  override calculate(...given: BaseValueObject[]): BaseValueObject {
    const answer = super.calculate(...given) as BaseValueObject;
    return answer.isError() ? (given.map(errorIn).find(Boolean) ?? answer) : answer;
  }
}

function errorIn(given: BaseValueObject): BaseValueObject | undefined {
  if (given.isError()) return given;
  let found: BaseValueObject | undefined;
  if (given.isArray())
    (given as ArrayValueObject).iterator((one) => {
      if (one?.isError()) found = one as BaseValueObject;
      return !found;
    });
  return found;
}
