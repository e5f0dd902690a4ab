import { areaOf, placeAt } from '../../../src/sheets/area.js';
import type { SheetChart } from '../../../src/sheets/sheet.js';

/** A rectangle of the sheet in its own pixels, from the corner of its first cell. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Where each column and each row of a sheet ends, in pixels; what is hidden ends where it begins. */
export interface Edges {
  readonly columns: ArrayLike<number>;
  readonly rows: ArrayLike<number>;
}

type Placed = Pick<SheetChart, 'place' | 'inset'>;

const endOf = (edges: ArrayLike<number>, at: number): number => edges[Math.min(at, edges.length - 1)] ?? 0;
const beginOf = (edges: ArrayLike<number>, at: number): number => (at === 0 ? 0 : endOf(edges, at - 1));

/** How far from one place inside a line to one inside another, where both are there. */
function span(edges: ArrayLike<number>, first: number, last: number, from = 0, to = Number.POSITIVE_INFINITY) {
  const begin = Math.min(beginOf(edges, first) + from, endOf(edges, first));
  const end = Math.min(beginOf(edges, last) + to, endOf(edges, last));
  return [begin, Math.max(0, end - begin)] as const;
}

/** Where a chart stands. */
export function boxOf({ place, inset }: Placed, { columns, rows }: Edges): Box {
  const { row, column, rows: down, columns: right } = areaOf(place);
  const [left, width] = span(columns, column, column + right - 1, inset?.left, inset?.right);
  const [top, height] = span(rows, row, row + down - 1, inset?.top, inset?.bottom);
  return { left, top, width, height };
}

/** The line in which a pixel lies; one on the edge of two belongs to the latter, or to the former if it ends there. */
function lineAt(edges: ArrayLike<number>, pixel: number, ends: boolean): number {
  let [low, high] = [0, edges.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    const end = edges[middle] ?? 0;
    if (ends ? end >= pixel : end > pixel) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** The cells that a box covers, and how far inside of them it begins and ends. */
export function placeOfBox({ left, top, width, height }: Box, { columns, rows }: Edges): Required<Placed> {
  const [column, row] = [lineAt(columns, left, false), lineAt(rows, top, false)];
  const [last, foot] = [lineAt(columns, left + width, true), lineAt(rows, top + height, true)];
  return {
    place: `${placeAt({ row, column })}:${placeAt({ row: foot, column: last })}`,
    inset: {
      left: left - beginOf(columns, column),
      top: top - beginOf(rows, row),
      right: left + width - beginOf(columns, last),
      bottom: top + height - beginOf(rows, foot),
    },
  };
}

/** A chart smaller than this could not be read. */
export const LEAST = { width: 160, height: 120 };

/** The same box as far as the sheet reaches, and large enough to be read. */
export function within({ left, top, width, height }: Box, { columns, rows }: Edges): Box {
  const [right, foot] = [columns[columns.length - 1] ?? 0, rows[rows.length - 1] ?? 0];
  const [wide, high] = [Math.min(Math.max(width, LEAST.width), right), Math.min(Math.max(height, LEAST.height), foot)];
  return {
    left: Math.round(Math.min(Math.max(0, left), right - wide)),
    top: Math.round(Math.min(Math.max(0, top), foot - high)),
    width: Math.round(wide),
    height: Math.round(high),
  };
}
