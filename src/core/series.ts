import type { Cell, NamesInput, SeriesInput } from './input.js';
import type { Refused } from './output.js';
import { isRefused, numberRefusal, refused } from './read.js';
import { columnToSI } from './units.js';
import { isMissing, spanInWords } from './wording.js';

/**
 * A range handed over for a series or for names, in reading order; undefined where none was given. A Float64Array is
 * taken over: its numbers are turned into SI where they stand, so that a long log is copied once.
 */
export type Column = ArrayLike<Cell> | undefined;
export type SeriesValue = Float64Array | readonly string[] | undefined;
type WholeInput = SeriesInput | NamesInput;
type Given = readonly [key: string, input: WholeInput, column: ArrayLike<Cell>];

const isBlank = (cell: Cell | undefined): boolean => cell === null || cell === undefined || cell === '';
/** Some hosts hand a blank over as 0: where every column is blank or 0, nothing was entered. */
const isRoom = (cell: Cell | undefined): boolean => isBlank(cell) || cell === 0;

/**
 * The number of positions that the columns hold once the blank ones at the end are passed over, so that a
 * range may have room to grow.
 */
export function pairedLength(columns: readonly ArrayLike<Cell>[]): number {
  let length = Math.max(0, ...columns.map((column) => column.length));
  while (length > 0 && columns.every((column) => isRoom(column[length - 1]))) length--;
  return length;
}

/** Which rows of the columns count, one after the other, and where each stands in the worksheet's range. */
interface Rows {
  readonly count: number;
  at(position: number): number;
}

const allRows = (count: number): Rows => ({ count, at: (position) => position });

/** A list may have gaps. */
function rowsOfList(columns: readonly ArrayLike<Cell>[], length: number): Rows {
  const used = Array.from({ length }, (_, row) => row).filter((row) => columns.some((column) => !isRoom(column[row])));
  return { count: used.length, at: (position) => used[position] as number };
}

function readNumbers(input: SeriesInput, column: ArrayLike<Cell>, { count, at }: Rows): Float64Array | Refused {
  const [least, most] = input.limit;
  const values = column instanceof Float64Array ? column.subarray(0, count) : new Float64Array(count);
  for (let position = 0; position < count; position++) {
    const row = at(position);
    const cell = column[row] as Cell;
    if (typeof cell === 'number' && cell >= least && cell <= most) {
      values[position] = cell;
      continue;
    }
    const place = { ...input, label: `${input.label}, row ${row + 1},` };
    if (isBlank(cell)) return refused(`${place.label} is blank. It must be ${spanInWords(input.limit, input.unit)}.`);
    return refused(numberRefusal(place, cell) as string);
  }
  return columnToSI(values, input.unit);
}

const readNames = (column: ArrayLike<Cell>, { count, at }: Rows): readonly string[] =>
  Array.from({ length: count }, (_, position) => {
    const cell = column[at(position)] as Cell;
    return isRoom(cell) ? '' : String(cell).trim();
  });

function unequal(numbers: readonly Given[], length: number): Refused | undefined {
  const short = numbers.find(([, , column]) => column.length < length);
  const long = numbers.find(([, , column]) => column.length >= length);
  if (!short || !long) return undefined;
  const one = `${short[1].label} has ${short[2].length} rows`;
  return refused(
    `${short[1].label} and ${long[1].label} must be equally long, but ${one} and ${long[1].label} ${length}.`,
  );
}

function tooFew(input: SeriesInput, given: number): Refused {
  const count = given === 0 ? 'the range is blank' : `${given} ${given === 1 ? 'was' : 'were'} given`;
  return refused(
    `${input.label} needs at least ${input.least} rows, each ${spanInWords(input.limit, input.unit)}, but ${count}.`,
  );
}

const standsForAll = (input: WholeInput, column: ArrayLike<Cell>): boolean =>
  input.kind === 'series' && input.oneForAll === true && column.length === 1;

/** Reads all series and names of a calculation together, since they pair up by position. */
export function readSeries(
  inputs: readonly (readonly [string, WholeInput])[],
  columns: Readonly<Record<string, Column>>,
): Record<string, SeriesValue> | Refused {
  const given: Given[] = [];
  for (const [key, input] of inputs) {
    const column = columns[key];
    if (column !== undefined) given.push([key, input, column]);
    else if (input.optional) continue;
    else if (input.kind === 'names') return refused(`${input.label} must be a range of texts, but nothing was given.`);
    else return refused(isMissing(input));
  }
  const paired = given.filter(([, input, column]) => !standsForAll(input, column));
  const side = paired.map(([, , column]) => column);
  const length = pairedLength(side);
  const mismatch = unequal(
    paired.filter(([, input]) => input.kind === 'series'),
    length,
  );
  if (mismatch) return mismatch;

  const isList = given.some(([, { kind }]) => kind === 'names');
  const rows = isList ? rowsOfList(side, length) : allRows(length);
  const values: Record<string, SeriesValue> = {};
  for (const [key, input, column] of given) {
    if (input.kind === 'names') {
      values[key] = readNames(column, rows);
      continue;
    }
    const single = standsForAll(input, column);
    if (!single && rows.count < input.least) return tooFew(input, rows.count);
    const read = readNumbers(input, column, single ? allRows(1) : rows);
    if (isRefused(read)) return read;
    values[key] = single ? new Float64Array(rows.count).fill(read[0] as number) : read;
  }
  return values;
}
