import { LETTER } from './letter.js';

export interface NamePlace {
  /** Where the sign before the name begins. */
  readonly x: number;
  readonly row: number;
}

/** Room for a sign before a name and for what is between two of them, in lines of text. */
export const SIGN = 1.8;
const GAP = 1;

/** Where names stand beside each other, in as many rows as they need. */
export function sideBySide(names: readonly string[], width: number, text: number): readonly NamePlace[] {
  const line = text * 1.4;
  let [x, row] = [0, 0];
  return names.map((name) => {
    const length = SIGN * line + name.length * text * LETTER;
    if (x > 0 && x + length > width) [x, row] = [0, row + 1];
    const place = { x, row };
    x += length + GAP * line;
    return place;
  });
}

/** How many rows that makes. */
export const rowsOf = (places: readonly NamePlace[]): number => (places.at(-1)?.row ?? -1) + 1;
