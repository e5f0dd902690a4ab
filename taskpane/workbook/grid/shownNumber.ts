import { type Notation, written } from '../entry/notation.js';

/** How wide a text is, in pixels. */
export type Measure = (text: string) => number;

/** Widths in shares of the font’s size; digits are all alike in the fonts of worksheets. */
const DIGIT = 0.556;
const OTHERS: Readonly<Record<string, number>> = {
  '.': 0.278,
  ',': 0.278,
  ' ': 0.278,
  '-': 0.333,
  E: 0.667,
  '%': 0.889,
};

/** @param size of the font in pixels. */
export const measureOf =
  (size: number): Measure =>
  (text) =>
    [...text].reduce((sum, mark) => sum + (OTHERS[mark] ?? DIGIT), 0) * size;

/** Outside of these a number is written by powers of ten where its digits do not fit. */
const [SMALL, LARGE] = [1e-4, 1e15];
/** The most digits that a sheet shows: 0.1 + 0.2 is 0.3. */
const MOST = 15;

/** A number without a format with every digit that it has. */
export const allDigits = (value: number, notation: Notation): string =>
  written(Number(value.toPrecision(MOST)), notation);

/** Fewer and fewer digits. */
function* roundings(value: number): Generator<string> {
  const size = Math.abs(value);
  if (size === 0 || (size >= SMALL && size < LARGE)) {
    yield String(Number(value.toPrecision(MOST)));
    // Whole digits are never dropped, and at least three that matter stay.
    const least = Math.max(0, 2 - Math.floor(Math.log10(size)));
    for (let places = MOST; places >= Math.min(least, MOST); places--) yield String(Number(value.toFixed(places)));
  }
  for (let places = MOST - 1; places >= 0; places--) yield exponential(value, places);
}

function exponential(value: number, places: number): string {
  const [digits = '', power = ''] = value.toExponential(places).split('e');
  return `${digits.includes('.') ? digits.replace(/\.?0+$/, '') : digits}E${power}`;
}

/** So that a number which is cut off is never taken for another. */
const hashes = (room: number, measure: Measure): string => '#'.repeat(Math.max(1, Math.floor(room / measure('#'))));

/** A number without a format with as many digits as fit into so many pixels. */
export function shownNumber(value: number, room: number, measure: Measure, { decimal }: Notation): string {
  for (const text of roundings(value)) {
    if (measure(text) <= room) return text.replace('.', decimal);
  }
  return hashes(room, measure);
}

/** A number in its format, or a sign that it does not fit. */
export const shownFormatted = (text: string, room: number, measure: Measure): string =>
  measure(text) <= room ? text : hashes(room, measure);
