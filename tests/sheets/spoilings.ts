import type { StarterSheet } from '../../src/sheets/sheet.js';
import { address } from '../../taskpane/workbook/grid/place.js';
import { isRoom, shortened } from './shortened.js';

export type Content = string | number;

/** A figure of the example that someone may spoil. */
export interface Figure {
  readonly at: string;
  readonly number: number;
  readonly limit: readonly [number, number];
  /** Blank it is not missing: the row counts without it. */
  readonly optional: boolean;
  /** The whole row, where it is one of a list. */
  readonly row: readonly { readonly at: string; readonly content: Content }[] | undefined;
}

/** A feed trial whose outlet haze nobody read: only the fit of the hazes does without it. */
const OPTIONAL = /^Outlet hazes must/;

export function figuresOf({ rows }: StarterSheet): readonly Figure[] {
  // A list is the rows of inputs right above its room.
  const inputsOf = (r: number) => rows[r]?.filter(({ style }) => style === 'input').length;
  const listed = new Map<number, boolean>();
  for (let r = rows.length - 1; r >= 0; r--)
    listed.set(
      r,
      (isRoom(rows[r + 1]) || listed.get(r + 1) === true) && inputsOf(r) === inputsOf(r + 1) && !isRoom(rows[r]),
    );
  const ends = new Set([...listed].flatMap(([r, is]) => (is && !(listed.get(r - 1) && listed.get(r + 1)) ? [r] : [])));
  return rows.flatMap((row, r) => {
    if (listed.get(r) && !ends.has(r)) return [];
    const whole = listed.get(r)
      ? row.flatMap(({ style, text, number }, c) =>
          style === 'input' ? [{ at: address(r, c), content: number ?? text ?? '' }] : [],
        )
      : undefined;
    return row.flatMap(({ style, number, validation }, c) =>
      style === 'input' && number !== undefined && validation?.limit
        ? [
            {
              at: address(r, c),
              number,
              limit: validation.limit,
              optional: OPTIONAL.test(validation.message),
              row: whole,
            },
          ]
        : [],
    );
  });
}

/** With little room in its lists, so that each change is calculated in a short time. */
export const toSpoil = (starter: StarterSheet): StarterSheet => shortened(starter, 4);

/** What people leave in a cell by mistake; figures only where its limits refuse them. */
export function spoilings({ number, limit: [least, most], optional }: Figure): readonly Content[] {
  const figures = [-Math.abs(number || 1), number * 100].filter((one) => one < least || one > most);
  return [...(optional ? [] : ['']), '2.9 mPas', ...figures];
}
