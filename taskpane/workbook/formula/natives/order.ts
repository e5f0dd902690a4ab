import {
  type BaseValueObject,
  BooleanValueObject,
  NumberValueObject,
  StringValueObject,
} from '../../engine/formula.js';

const collator = new Intl.Collator('en');

/** A blank is 0 beside a number, an empty text beside a text and FALSE beside a boolean. */
function beside(value: BaseValueObject, other: BaseValueObject): BaseValueObject {
  if (!value.isNull()) return value;
  if (other.isString()) return StringValueObject.create('');
  return other.isBoolean() ? BooleanValueObject.create(false) : NumberValueObject.create(0);
}

/** Every number comes before every text, and every text before FALSE and TRUE. */
export const rank = (value: BaseValueObject): number => (value.isBoolean() ? 2 : value.isString() ? 1 : 0);

function texts(one: string, other: string): number {
  const [left, right] = [one.toLowerCase(), other.toLowerCase()];
  return left === right ? 0 : collator.compare(left, right) || (left < right ? -1 : 1);
}

/** Below zero where the first value comes before the second, zero where they are equal: ECMA-376 part 1, 18.17.2.2. */
export function order(first: BaseValueObject, second: BaseValueObject): number {
  const [left, right] = [beside(first, second), beside(second, first)];
  if (rank(left) !== rank(right)) return rank(left) - rank(right);
  if (left.isString()) return texts(String(left.getValue()), String(right.getValue()));
  const [one, other] = [Number(left.getValue()), Number(right.getValue())];
  // Sums of decimals are equal to what they stand for, as far as fifteen digits go.
  return Math.abs(one - other) <= Math.abs(one) * 1e-15 ? 0 : one - other;
}
