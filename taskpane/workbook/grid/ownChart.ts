import type { SheetChart } from '../../../src/sheets/sheet.js';
import { a1, columnLetters } from '../../host/a1.js';
import type { CellContent } from '../../host/cell.js';
import type { Region } from '../../host/region.js';
import { STROKES } from '../../host/strokes.js';
import type { Texts } from '../../texts/texts.js';
import { address } from './place.js';

export type ChartKind = SheetChart['kind'];
export type ChartRefusal = (words: Texts['charts']) => string;

type At = (row: number, column: number) => CellContent;
/** What stands over a column: its name, and its unit where one stands below that. */
interface Head {
  readonly name: string;
  readonly unit: string;
}

const rowsFrom = (first: number, last: number) =>
  Array.from({ length: Math.max(0, last - first + 1) }, (_, n) => first + n);

const withUnit = ({ name, unit }: Head): string => (unit === '' ? name : `${name} (${unit})`);

/** The rows of names and of units over the first figures of a table; undefined where there is none. */
function headRows({ top, bottom, left, right }: Region, at: At) {
  const columns = rowsFrom(left, right);
  const isHead = (row: number) => columns.every((column) => typeof at(row, column) !== 'number');
  let first = top;
  while (first <= bottom && isHead(first)) first += 1;
  const isFull = (row: number) => columns.every((column) => (at(row, column) ?? '') !== '');
  const [above, last] = [first - 2, first - 1];
  if (above >= top && isFull(above)) return { first, names: above, units: last };
  return { first, names: last >= top ? last : undefined, units: undefined };
}

/** A chart of the figures in a table, named by its titles; or why there is none. */
export function ownChart(
  kind: ChartKind,
  region: Region,
  at: At,
  words: Texts['charts'],
): Omit<SheetChart, 'place'> | ChartRefusal {
  const { first, names, units } = headRows(region, at);
  const rows = rowsFrom(first, region.bottom);
  const columns = rowsFrom(region.left, region.right);
  const figures = columns.filter((column) => rows.some((row) => typeof at(row, column) === 'number'));
  const across = kind === 'bars' ? region.left : figures[0];
  const upwards = figures.filter((column) => column !== across);
  if (across === undefined || upwards.length === 0) return ({ twoColumns }) => twoColumns;
  if (upwards.length > STROKES.length) return ({ tooMany }) => tooMany(String(STROKES.length), String(upwards.length));
  const wordAt = (row: number | undefined, column: number) =>
    row === undefined ? '' : String(at(row, column) ?? '').trim();
  const headOf = (column: number): Head => ({
    name: wordAt(names, column) || words.column(columnLetters(column)),
    unit: wordAt(units, column),
  });
  const heads = upwards.map(headOf);
  const [one] = heads as [Head];
  const same = heads.every(({ unit }) => unit === one.unit) && one.unit;
  const all = heads.map(({ name }) => name).join(', ');
  const range = (column: number) => address(first, column, region.bottom, column);
  return {
    title: words.over[kind](all, headOf(across).name),
    kind,
    across: { title: withUnit(headOf(across)) },
    upwards: { title: heads.length === 1 ? withUnit(one) : same || all },
    series: upwards.map((column, index) => ({
      name: (heads[index] as Head).name,
      ...(names !== undefined && wordAt(names, column) ? { named: a1(names, column) } : {}),
      across: range(across),
      upwards: range(column),
    })),
  };
}
