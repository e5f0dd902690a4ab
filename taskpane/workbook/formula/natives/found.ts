import { type ArrayValueObject, type BaseValueObject, StringValueObject } from '../../engine/formula.js';
import { nearest } from './search.js';
import type { Singly } from './singly.js';

/** An error that was found, in a form that the engine does not take for nothing found. */
class Found extends StringValueObject {
  constructor(readonly error: BaseValueObject) {
    super('');
  }
}

const outOf = (value: BaseValueObject): BaseValueObject => (value instanceof Found ? value.error : value);

/**
 * XLOOKUP.
 * What: `=XLOOKUP(2,{1,2},A1:B1,"none")` where B1 holds #DIV/0!. Expected: #DIV/0!, which was found. Got: "none".
 */
export class Xlookup extends (nearest('XLOOKUP') as Singly) {
  override _handleSingleObject(...given: readonly BaseValueObject[]): BaseValueObject {
    const [value, searched, , ...rest] = given as [BaseValueObject, BaseValueObject, BaseValueObject, BaseValueObject];
    const answer = super._handleSingleObject(...given);
    if (!answer.isError()) return answer;
    return super._handleSingleObject(value, searched, searched, ...rest).isError() ? answer : new Found(answer);
  }

  override calculate(...given: BaseValueObject[]): BaseValueObject {
    const answer = super.calculate(...given) as BaseValueObject;
    return answer.isArray() ? (answer as ArrayValueObject).mapValue(outOf) : outOf(answer);
  }
}
