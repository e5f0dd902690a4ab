import { placeOf } from './place.js';

export interface Place {
  readonly row: number;
  readonly column: number;
}

export interface Area extends Place {
  readonly rows: number;
  readonly columns: number;
}

function placeIn(address: string): Place {
  const [, letters = '', digits = ''] = /^([A-Z]+)(\d+)$/.exec(address.replaceAll('$', '')) ?? [];
  const column = [...letters].reduce((sum, letter) => 26 * sum + letter.charCodeAt(0) - 64, 0) - 1;
  return { row: Number(digits) - 1, column };
}

/** `B7` or `B7:C9` as numbers, counted from 0. */
export function areaOf(range: string): Area {
  const [from = '', to = from] = range.split(':');
  const [first, last] = [placeIn(from), placeIn(to)];
  return { ...first, rows: last.row - first.row + 1, columns: last.column - first.column + 1 };
}

export const placeAt = ({ row, column }: Place): string => placeOf(row, { column });

export const cellsIn = ({ rows, columns }: Area): number => rows * columns;

export const placesIn = ({ row, column, rows, columns }: Area): readonly Place[] =>
  Array.from({ length: rows * columns }, (_, index) => ({
    row: row + Math.floor(index / columns),
    column: column + (index % columns),
  }));
