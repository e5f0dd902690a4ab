import { BaseFunction, type BaseValueObject, BooleanValueObject } from '../../engine/formula.js';
import { elementwise } from './elementwise.js';
import { order } from './order.js';

const HOLDS: Readonly<Record<string, (order: number) => boolean>> = {
  '=': (found) => found === 0,
  '<>': (found) => found !== 0,
  '<': (found) => found < 0,
  '<=': (found) => found <= 0,
  '>': (found) => found > 0,
  '>=': (found) => found >= 0,
};

/**
 * The operators = <> < <= > >=.
 * What: `=A1>=10` where A1 holds #VALUE!; `=A1=""` where A1 holds 0; `="abc"="a*"`; `=TRUE<>1`; `=A1=FALSE` where A1 is
 * blank. Expected: #VALUE!; FALSE; FALSE (no wildcards in an operator); TRUE; TRUE. Got: TRUE; TRUE; TRUE; FALSE; FALSE.
 */
export class Compare extends BaseFunction {
  override minParams = 2;
  override maxParams = 2;
  private token = '=';

  /** The engine names the operator before each call. */
  setCompareType(token: string): void {
    this.token = token;
  }

  override calculate(left: BaseValueObject, right: BaseValueObject): BaseValueObject {
    const holds = HOLDS[this.token]!;
    return elementwise(left, right, (one, other) => BooleanValueObject.create(holds(order(one, other))));
  }
}
