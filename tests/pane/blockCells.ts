import type { Cell } from '../../src/core/input.js';
import { a1 } from '../../taskpane/host/a1.js';
import type { BlockCell } from '../../taskpane/host/host.js';
import type { LaidOut } from '../../taskpane/pane/form/block.js';

const contentOf = ({ text, number }: BlockCell): Cell => number ?? text ?? null;

/** The addresses from one corner to the other, row by row. */
function addresses(reference: string, cells: ReadonlyMap<string, readonly [number, number]>): string[][] {
  const [from = '', to = from] = reference.split(':');
  const [top, left] = cells.get(from) as readonly [number, number];
  const [bottom, right] = cells.get(to) as readonly [number, number];
  const length = (one: number, other: number) => ({ length: other - one + 1 });
  return Array.from(length(top, bottom), (_, r) => Array.from(length(left, right), (__, c) => a1(top + r, left + c)));
}

/** A block as a sheet would hold it from A1 on: its formula, and what each argument of the formula refers to. */
export function inASheet({ block, formula: [row, column] }: LaidOut) {
  const places = new Map<string, readonly [number, number]>();
  const values = new Map<string, Cell>();
  for (const [r, line] of block.rows.entries()) {
    for (const [c, cell] of line.entries()) {
      places.set(a1(r, c), [r, c]);
      values.set(a1(r, c), contentOf(cell));
    }
  }
  const formula = block.rows[row]?.[column]?.formula?.(a1) ?? '';
  const [, id = '', list = ''] = /^=POWDER\.([A-Z0-9]+)\((.*)\)$/.exec(formula) ?? [];
  const args = list.split(',').map((reference) => {
    if (reference === '') return null;
    return addresses(reference, places).map((line) => line.map((address) => values.get(address) ?? null));
  });
  return { formula, id, args };
}
