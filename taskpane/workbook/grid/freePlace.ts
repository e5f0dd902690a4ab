import { areaOf } from '../../../src/sheets/area.js';
import type { Region } from '../../host/region.js';
import { type Box, type Edges, placeOfBox, within } from './chartPlace.js';

const SIZE = { width: 480, height: 300 };
/** Between a table and its chart. */
const GAP = 16;

const apart = (one: Box, other: Box): boolean =>
  one.left + one.width <= other.left ||
  other.left + other.width <= one.left ||
  one.top + one.height <= other.top ||
  other.top + other.height <= one.top;

interface Sheet {
  readonly edges: Edges;
  /** Where charts stand already. */
  readonly taken: readonly Box[];
  readonly last: { readonly row: number; readonly column: number };
  /** Whether nothing is shown in a cell, also of texts that run over from others. */
  isFree(row: number, column: number): boolean;
}

/** Room for a chart beside a table, below it, or right of all that stands there: a chart hides no figures. */
export function freePlace({ top, bottom, left, right }: Region, { edges, taken, last, isFree }: Sheet): Box {
  const begins = (lines: ArrayLike<number>, at: number) => (at === 0 ? 0 : (lines[at - 1] ?? 0));
  const at = (row: number, column: number, gap = { left: 0, top: 0 }): Box =>
    within({ ...SIZE, left: begins(edges.columns, column) + gap.left, top: begins(edges.rows, row) + gap.top }, edges);
  const fits = (box: Box) => {
    if (!taken.every((one) => apart(box, one))) return false;
    const { row, column, rows, columns } = areaOf(placeOfBox(box, edges).place);
    for (let r = row; r < row + rows; r += 1)
      for (let c = column; c < column + columns; c += 1) if (!isFree(r, c)) return false;
    return true;
  };
  const beside = { left: GAP, top: 0 };
  const places = [at(top, right + 1, beside), at(bottom + 1, left, { left: 0, top: GAP })];
  for (let column = right + 2; column <= last.column + 1; column += 1) places.push(at(top, column, beside));
  const below = at(Math.max(bottom, last.row) + 1, left, { left: 0, top: GAP });
  return [...places, below].find(fits) ?? below;
}
