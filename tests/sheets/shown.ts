import type { StarterSheet } from '../../src/sheets/sheet.js';
import type { CellContent } from '../../taskpane/host/host.js';
import { address } from '../../taskpane/workbook/grid/place.js';
import { calculateStarter } from '../workbook/headless.js';

/** A calculated starter sheet, read as a person reads it: by names, by labels, by ranges. */
export interface Shown {
  readonly starter: StarterSheet;
  cell(address: string): CellContent;
  /** The cells of a range such as `B7:C9`, row by row. */
  range(range: string): CellContent[][];
  /** The figure behind a defined name. */
  named(name: string): number;
  /** The cell beside a label, so many columns to the right, at or below a heading. */
  beside(label: string, options?: { readonly column?: number; readonly under?: string }): CellContent;
  dispose(): void;
}

const A1 = /^([A-Z]+)(\d+)$/;

export function placeOf(cell: string): { row: number; column: number } {
  const [, letters = '', digits = ''] = A1.exec(cell.replaceAll('$', '')) ?? [];
  const column = [...letters].reduce((sum, letter) => 26 * sum + letter.charCodeAt(0) - 64, 0) - 1;
  return { row: Number(digits) - 1, column };
}

export function cellsOf(range: string): string[][] {
  const [first = '', last = first] = range.split(':');
  const [from, to] = [placeOf(first), placeOf(last)];
  return Array.from({ length: to.row - from.row + 1 }, (_, row) =>
    Array.from({ length: to.column - from.column + 1 }, (__, column) => address(from.row + row, from.column + column)),
  );
}

export async function shown(starter: StarterSheet): Promise<Shown> {
  const sheet = await calculateStarter(starter);
  const cell = (place: string) => sheet.at(place).value;
  const labels = starter.rows.map((row) => row[0]?.text);
  const nameOf = (name: string) => {
    const place = starter.names[name];
    if (place === undefined) throw new Error(`${starter.name} defines no name ${name}.`);
    return place;
  };
  return {
    starter,
    cell,
    range: (range) => cellsOf(range).map((row) => row.map(cell)),
    named(name) {
      const value = cell(nameOf(name));
      if (typeof value !== 'number') throw new Error(`${name} shows ${value}.`);
      return value;
    },
    beside(label, { column = 1, under } = {}) {
      const from = under === undefined ? 0 : labels.indexOf(under);
      const row = labels.indexOf(label, from);
      if (from < 0 || row < 0) throw new Error(`${starter.name} has no row ${label} under ${under}.`);
      return cell(address(row, column));
    },
    dispose: sheet.dispose,
  };
}

/** The cells whose answers show their figure only while what they rest on is sound. */
export const answersOf = ({ rows }: StarterSheet): readonly string[] =>
  rows.flatMap((row, r) =>
    row.flatMap(({ formula = '' }, c) =>
      formula.startsWith('=IF(LEFT(') && formula.includes('"see "&') ? [address(r, c)] : [],
    ),
  );
