import { parseA1Range } from '@borgar/fx';

/** A place counted from 0. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

export interface Rectangle {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

const CELL = /^\$?([A-Z]{1,3})\$?([1-9]\d{0,6})$/;
const MOST_ROWS = 1_048_576;
const MOST_COLUMNS = 16_384;

/** The place of an address such as `B7`; undefined where no sheet has such a place. */
export function placeOf(address: string): Place | undefined {
  const [, letters = '', digits = ''] = CELL.exec(address.toUpperCase()) ?? [];
  const row = Number(digits) - 1;
  let column = 0;
  for (const letter of letters) column = column * 26 + letter.charCodeAt(0) - 64;
  return letters !== '' && row < MOST_ROWS && column <= MOST_COLUMNS ? { row, column: column - 1 } : undefined;
}

/** The rectangle of a range; whole columns and rows end where a sheet ends. */
export function rectangleOf(range: string): Rectangle | undefined {
  const found = parseA1Range(range);
  if (!found) return undefined;
  const { top, left, bottom, right } = found;
  return { top: top ?? 0, left: left ?? 0, bottom: bottom ?? MOST_ROWS - 1, right: right ?? MOST_COLUMNS - 1 };
}

/** The ranges of a list with spaces between them; those that cannot be read are absent. */
export const rectanglesOf = (list: string, most: number): Rectangle[] =>
  list
    .split(/\s+/, most)
    .map(rectangleOf)
    .filter((one) => one !== undefined);
