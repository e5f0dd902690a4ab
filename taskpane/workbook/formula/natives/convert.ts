import {
  type ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
} from '../../engine/formula.js';
import { elementwise } from './elementwise.js';
import { BINARY, PREFIXES, TEMPERATURES, UNITS } from './units.js';

/** A unit on the scale of its quantity: `value × factor + zero` is the value in the quantity's first unit. */
interface Scale {
  readonly quantity: string;
  readonly factor: number;
  readonly zero: number;
}

const scales = new Map<string, Scale>();

function add(symbols: string, scale: Scale, prefixed: boolean): void {
  for (const symbol of symbols.split(' ')) {
    scales.set(symbol, scale);
    if (!prefixed) continue;
    const prefixes = scale.quantity === 'information' ? [...PREFIXES, ...BINARY] : [...PREFIXES];
    for (const [prefix, times] of prefixes) {
      // A unit of its own, such as the foot or the day, is not a prefix and a unit.
      if (!scales.has(prefix + symbol)) scales.set(prefix + symbol, { ...scale, factor: scale.factor * times });
    }
  }
}

// First every unit without prefixes, so that none of them is hidden.
for (const withPrefixes of [false, true]) {
  for (const [quantity, units] of Object.entries(UNITS)) {
    for (const [symbols, factor, prefixed] of units)
      add(symbols, { quantity, factor, zero: 0 }, withPrefixes && prefixed === true);
  }
  for (const [symbols, factor, zero, prefixed] of TEMPERATURES)
    add(symbols, { quantity: 'temperature', factor, zero }, withPrefixes && prefixed === true);
}

function converted(value: number, from: string, to: string): BaseValueObject {
  const [one, other] = [scales.get(from), scales.get(to)];
  if (!one || !other || one.quantity !== other.quantity) return ErrorValueObject.create(ErrorType.NA);
  const answer = from === to ? value : (value * one.factor + one.zero - other.zero) / other.factor;
  return Number.isFinite(answer) ? NumberValueObject.create(answer) : ErrorValueObject.create(ErrorType.NUM);
}

/**
 * CONVERT.
 * What: `=CONVERT(1,"atm","psi")`, `=CONVERT(1,"eV","J")`, `=CONVERT(1,"T","ga")`, `=CONVERT(100,"F","C")`.
 * Expected: 14.6959…, 1.602…E-19, 10000, 37.777… (ECMA-376 part 1, 18.17.7.56). Got: #N/A, 1.602…, 1, 37.78.
 */
export class Convert extends BaseFunction {
  override minParams = 3;
  override maxParams = 3;

  override calculate(number: BaseValueObject, from: BaseValueObject, to: BaseValueObject): BaseValueObject {
    const target = to.isArray() ? (to as ArrayValueObject).getFirstCell() : to;
    return elementwise(number, from, (value, unit) => {
      const given = value.convertToNumberObjectValue();
      if (given.isError() || value.isBoolean()) return ErrorValueObject.create(ErrorType.VALUE);
      if (target.isError()) return target;
      return converted(Number(given.getValue()), String(unit.getValue()), String(target.getValue()));
    });
  }
}
