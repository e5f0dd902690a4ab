import type { SheetCell, StarterSheet } from '../../src/sheets/sheet.js';

interface Cut {
  readonly from: number;
  readonly count: number;
}

const REFERENCE = /(?<![A-Z0-9.])(\$?[A-Z]{1,2}\$?)(\d+)(?![\d(])/g;

/** Where a row stands once others are taken out; one that is taken out falls on the one that ends what was cut. */
const rowAfter = (row: number, cuts: readonly Cut[]): number =>
  row - cuts.reduce((gone, { from, count }) => gone + Math.max(0, Math.min(count, row - from)), 0);

/** A formula once rows are taken out, as a spreadsheet program changes it; texts are left alone. */
const cutFormula = (formula: string, cuts: readonly Cut[]): string =>
  formula
    .split(/("[^"]*")/)
    .map((part) =>
      part.startsWith('"')
        ? part
        : part.replace(REFERENCE, (_, letters, row) => `${letters}${rowAfter(Number(row), cuts)}`),
    )
    .join('');

/** Whether a row waits to be filled in, with nothing in it. */
export const isRoom = (cells: readonly SheetCell[] = []): boolean =>
  cells.length > 0 &&
  cells.some(({ style }) => style === 'input') &&
  cells.every(({ text = '', number, formula }) => text === '' && number === undefined && formula === undefined);

/**
 * A starter sheet whose lists have less room, as after rows of room were deleted: the same formulas over fewer rows,
 * so that many changes can be calculated in a short time.
 */
export function shortened(sheet: StarterSheet, room: number): StarterSheet {
  const cuts: Cut[] = [];
  let first: number | undefined;
  sheet.rows.forEach((cells, row) => {
    if (isRoom(cells)) first ??= row;
    else {
      if (first !== undefined && row - first > room) cuts.push({ from: first + room + 1, count: row - first - room });
      first = undefined;
    }
  });
  const gone = (row: number) => cuts.some(({ from, count }) => row + 1 >= from && row + 1 < from + count);
  const address = (one: string) => cutFormula(one, cuts);
  const { conditions = [], charts = [], names } = sheet;
  return {
    ...sheet,
    rows: sheet.rows
      .filter((_, row) => !gone(row))
      .map((cells) =>
        cells.map((cell) => (cell.formula ? { ...cell, formula: cutFormula(cell.formula, cuts) } : cell)),
      ),
    names: Object.fromEntries(Object.entries(names).map(([name, place]) => [name, address(place)])),
    conditions: conditions.map((one) => ({ ...one, range: address(one.range), formula: address(one.formula) })),
    charts: charts.map((one) => ({
      ...one,
      place: address(one.place),
      series: one.series.map((of) => ({ ...of, across: address(of.across), upwards: address(of.upwards) })),
    })),
  };
}
