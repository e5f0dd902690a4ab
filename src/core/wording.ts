import type { Bounds } from './input.js';
import { fromSI, type Unit } from './units.js';

const NARROW_SPACE = '\u202f';
const MOST_QUOTED = 60;

/** A number as sentences show it: never a grouping mark that one country reads as a decimal mark. */
export function plainNumber(value: number): string {
  const size = Math.abs(value);
  if (!Number.isInteger(value) || size < 10_000 || size >= 1e15) return String(value);
  return String(value).replace(/\B(?=(?:\d{3})+$)/g, NARROW_SPACE);
}

/** Text from a cell, cut so that a sentence stays one. */
export function quoted(text: string): string {
  return `"${text.length > MOST_QUOTED ? `${text.slice(0, MOST_QUOTED)}…` : text}"`;
}

const withUnit = (text: string, unit: Unit): string =>
  unit === '' || unit === 'fraction' || unit === 'as given' ? text : `${text} ${unit}`;

/** "from 0 to 0.999 as a fraction", "from 1 to 5000 g/hL". */
export function spanInWords([least, most]: readonly [number, number], unit: Unit): string {
  const span = `from ${plainNumber(least)} to ${plainNumber(most)}`;
  return unit === 'fraction' ? `a fraction ${span}` : withUnit(span, unit);
}

/** The column of a table, the row of a report or a plan's label: the label with its unit; of a price, what it is per. */
export const labelled = (label: string, unit: Unit): string => {
  if (!unit.startsWith('money')) return withUnit(label, unit);
  return unit === 'money' ? label : `${label} per ${unit.slice('money/'.length)}`;
};

export const amount = (value: number, unit: Unit): string => withUnit(plainNumber(value), unit);

/** A calculated figure in SI as sentences show it: in its unit, with no more digits than anyone reads. */
export const figure = (value: number, unit: Unit): string => amount(Number(fromSI(value, unit).toPrecision(4)), unit);

export type Limited = Pick<Bounds, 'unit' | 'limit'> & { readonly label: string };

const mustBe = ({ label, limit, unit }: Limited): string => `${label} must be ${spanInWords(limit, unit)}`;

export const outsideLimits = (input: Limited, given: number): string => {
  const percent = input.unit === 'fraction' && given > 1 && given <= 100 && given / 100 <= input.limit[1];
  const hint = percent ? ` For ${given} percent write ${given} % or ${given / 100}.` : '';
  return `${mustBe(input)}, but ${amount(given, input.unit)} was given.${hint}`;
};

export const isBlank = (input: Limited): string => `${mustBe(input)}, but the cell is blank or 0.`;

/** Of a figure that may be 0: a blank is none. */
export const isUnstated = (input: Limited): string =>
  `${mustBe(input)}, but the cell is blank. Type 0 where it is nothing.`;

export const isMissing = (input: Limited): string => `${mustBe(input)}, but nothing was given.`;

export const isText = (input: Limited, given: string): string =>
  `${input.label} is text, not a number: ${quoted(given)}. It must be ${spanInWords(input.limit, input.unit)}.`;

export const isTruth = (input: Limited, given: boolean): string =>
  `${input.label} is ${given ? 'TRUE' : 'FALSE'}, not a number. It must be ${spanInWords(input.limit, input.unit)}.`;

export const isNoNumber = (input: Limited): string =>
  `${input.label} is not a finite number. It must be ${spanInWords(input.limit, input.unit)}.`;

/** "hydrogel, xerogel or adsorptive". */
export function anyOf(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words[words.length - 1]}`;
}
