import { a1 } from '../a1.js';

/** The longest address of several areas that Excel takes is 8,192 characters. */
const LONGEST = 8000;

export interface Shape {
  /** Whether there are cells under each other. */
  readonly tall: boolean;
  /** Whether there are cells beside each other. */
  readonly wide: boolean;
}

interface Area {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  bottom: number;
}

const SHAPES: readonly Shape[] = [false, true].flatMap((tall) => [false, true].map((wide) => ({ tall, wide })));
const hasShape = ({ top, left, bottom, right }: Area, { tall, wide }: Shape): boolean =>
  tall === bottom > top && wide === right > left;
const addressOf = ({ top, left, bottom, right }: Area): string =>
  top === bottom && left === right ? a1(top, left) : `${a1(top, left)}:${a1(bottom, right)}`;

/** Runs of equal keys in a row, those without a key left out. */
function runsOf(keys: readonly (string | undefined)[], row: number): [key: string, Area][] {
  const runs: [string, Area][] = [];
  for (let left = 0; left < keys.length; ) {
    const key = keys[left];
    let right = left;
    while (right + 1 < keys.length && keys[right + 1] === key) right += 1;
    if (key !== undefined) runs.push([key, { left, right, top: row, bottom: row }]);
    left = right + 1;
  }
  return runs;
}

/**
 * Where the cells of each key stand, in as few rectangles as runs of equal cells make that lie under each other. A key is
 * whatever the cells have in common; a cell without one is left out.
 */
function areasOf<C>(
  cells: readonly (readonly C[])[],
  keyOf: (cell: C) => string | undefined,
): ReadonlyMap<string, readonly Area[]> {
  const areas = new Map<string, Area[]>();
  let above = new Map<string, Area>();
  for (const [row, line] of cells.entries()) {
    const here = new Map<string, Area>();
    for (const [key, run] of runsOf(line.map(keyOf), row)) {
      const place = [key, run.left, run.right].join('\n');
      const area = above.get(place) ?? run;
      area.bottom = row;
      here.set(place, area);
      if (area === run) areas.set(key, [...(areas.get(key) ?? []), run]);
    }
    above = here;
  }
  return areas;
}

/** Addresses joined as Excel takes several areas at once, in as few texts as their length allows. */
function joined(addresses: readonly string[]): string[] {
  const texts: string[] = [];
  for (const address of addresses) {
    const last = texts.at(-1);
    if (last !== undefined && last.length + address.length < LONGEST) texts[texts.length - 1] = `${last},${address}`;
    else texts.push(address);
  }
  return texts;
}

/** The same something of a cell, and the addresses of all cells that have it, by the shape of their rectangles. */
export function sharing<C, T>(
  cells: readonly (readonly C[])[],
  of: (cell: C) => T | undefined,
): { readonly same: T; readonly shape: Shape; readonly addresses: readonly string[] }[] {
  const keyOf = (cell: C) => JSON.stringify(of(cell)) as string | undefined;
  return [...areasOf(cells, keyOf)].flatMap(([key, areas]) =>
    SHAPES.map((shape) => ({
      same: JSON.parse(key) as T,
      shape,
      addresses: joined(areas.filter((area) => hasShape(area, shape)).map(addressOf)),
    })).filter(({ addresses }) => addresses.length > 0),
  );
}
