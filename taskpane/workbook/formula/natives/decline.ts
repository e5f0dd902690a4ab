import { type BaseValueObject, NumberValueObject } from '../../engine/formula.js';
import { engineClass } from './engineClass.js';
import { numberIn } from './singly.js';

const MONTHS = 12;

/** What is left of a value after whole years at a fixed rate, of which the first is short. */
function lost(cost: number, salvage: number, life: number, months: number): number {
  const rate = Number((1 - (salvage / cost) ** (1 / life)).toFixed(3));
  let left = cost * (1 - (rate * months) / MONTHS);
  for (let year = 2; year <= life; year += 1) left -= left * rate;
  return (left * rate * (MONTHS - months)) / MONTHS;
}

/**
 * DB.
 * What: `=DB(1000000,100000,6,7,7)`. Expected: 15845.10 for the five months of the seventh year (ECMA-376 part 1, 18.17.7.77;
 * LibreOffice 7.4). Got: #NUM!.
 */
export class DeclineBalance extends engineClass('DB') {
  override calculate(...given: BaseValueObject[]): BaseValueObject {
    const bare = super.calculate(...given) as BaseValueObject;
    const [cost, salvage, life, period, months = MONTHS] = given.map((one) =>
      one.isArray() ? undefined : numberIn(one),
    );
    if (!bare.isError() || cost === undefined || salvage === undefined || life === undefined) return bare;
    const isLast = Number.isInteger(life) && Math.floor(period ?? 0) === life + 1;
    const fits = cost > 0 && salvage >= 0 && life > 0 && months >= 1 && months < MONTHS;
    return isLast && fits ? NumberValueObject.create(lost(cost, salvage, life, Math.floor(months))) : bare;
  }
}
