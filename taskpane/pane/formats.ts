import type { Unit } from '../../src/core/units.js';
import { type Notation, notationOf, written } from '../workbook/entry/notation.js';

/** How this user reads and writes numbers. */
export interface Formats {
  readonly notation: Notation;
  readonly count: (value: number) => string;
  /** A number alone: a fraction as a percentage. */
  readonly number: (value: number, unit: Unit) => string;
  /** A number with its unit. */
  readonly amount: (value: number, unit: Unit) => string;
  /** A number as a person would type it: no grouping marks, every digit. */
  readonly field: (value: number, unit: Unit) => string;
}

/** Outside of these a number is written by powers of ten; sums of money and numbers without a unit go further. */
const NEITHER_SMALL_NOR_LARGE: readonly [number, number] = [1e-4, 1e9];
const LARGE_SUM = 1e15;
/** From here on seven digits would round off what stands before the decimal mark. */
const WHOLE = 1e5;

const isSum = (unit: Unit): boolean => unit === '' || unit.startsWith('money');

/** The unit to stand beside a number, or nothing where the number carries it or has none. */
export const unitBeside = (unit: Unit): string => (unit === 'fraction' || unit === 'as given' ? '' : unit);

export function formatsFor(locale: string): Formats {
  const notation = notationOf(locale);
  const plain = new Intl.NumberFormat(locale, { maximumSignificantDigits: 7 });
  const whole = new Intl.NumberFormat(locale, { maximumFractionDigits: 2 });
  const scientific = new Intl.NumberFormat(locale, { maximumSignificantDigits: 5, notation: 'scientific' });
  const percent = new Intl.NumberFormat(locale, { style: 'percent', maximumSignificantDigits: 7 });
  const number = (value: number, unit: Unit): string => {
    if (unit === 'fraction') return percent.format(value);
    const size = Math.abs(value);
    const [small, large] = NEITHER_SMALL_NOR_LARGE;
    if (value !== 0 && (size < small || size >= (isSum(unit) ? LARGE_SUM : large))) return scientific.format(value);
    return (size < WHOLE ? plain : whole).format(value);
  };
  const amount = (value: number, unit: Unit): string => {
    const beside = unitBeside(unit);
    return beside === '' ? number(value, unit) : `${number(value, unit)}\u00a0${beside}`;
  };
  const field = (value: number, unit: Unit): string =>
    unit === 'fraction' ? `${written(Number((value * 100).toPrecision(15)), notation)} %` : written(value, notation);
  return { notation, count: plain.format, number, amount, field };
}
