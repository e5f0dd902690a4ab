import fc from 'fast-check';
import { parametersOf } from '../../functions/parameters.js';
import type { Calculation } from '../../src/core/calculation.js';
import { hostileArgument, hostileCell, longArgument } from './cells.js';
import { validArguments } from './valid.js';

type Change = (args: readonly unknown[]) => unknown[];
type Matrix = readonly (readonly unknown[])[];

const isMatrix = (argument: unknown): argument is Matrix =>
  Array.isArray(argument) && argument.length > 0 && argument.every(Array.isArray);

/** Changes the argument at one place, if the call has any. */
const at =
  (place: number, change: (argument: unknown) => unknown): Change =>
  (args) =>
    args.map((argument, index) => (index === place % args.length ? change(argument) : argument));

const inMatrix = (change: (matrix: Matrix) => unknown) => (argument: unknown) =>
  isMatrix(argument) ? change(argument) : argument;

const setCell = (place: number, cell: unknown) =>
  inMatrix((matrix) => {
    const [row, width] = [place % matrix.length, Math.max(1, matrix[0]?.length ?? 1)];
    const column = Math.floor(place / matrix.length) % width;
    return matrix.map((cells, index) => (index === row ? cells.toSpliced(column, 1, cell) : cells));
  });

const turned = inMatrix((matrix) => (matrix[0] ?? []).map((_, column) => matrix.map((row) => row[column])));
const doubled = inMatrix((matrix) => [...matrix, ...matrix]);
const widened = inMatrix((matrix) => matrix.map((row) => [...row, ...row]));
const frayed = inMatrix((matrix) => matrix.map((row, index) => (index % 2 ? [] : row)));
const cut = inMatrix((matrix) => matrix.slice(1));
const bare = inMatrix((matrix) => (matrix.length === 1 && matrix[0]?.length === 1 ? matrix[0][0] : matrix));
const withRoom = inMatrix((matrix) => [...matrix, ...matrix.map((row) => row.map(() => null))]);
const formatted = inMatrix((matrix) =>
  matrix.map((row) =>
    row.map((cell) => (typeof cell === 'number' ? { type: 'FormattedNumber', basicValue: cell } : cell)),
  ),
);

const place = fc.nat({ max: 500 });

/** One thing that goes wrong in a call that is right otherwise. */
const change: fc.Arbitrary<Change> = fc.oneof(
  { weight: 8, arbitrary: fc.tuple(place, place, hostileCell).map(([a, b, cell]) => at(a, setCell(b, cell))) },
  { weight: 4, arbitrary: fc.tuple(place, hostileArgument).map(([a, argument]) => at(a, () => argument)) },
  {
    weight: 4,
    arbitrary: fc
      .tuple(place, fc.constantFrom(turned, doubled, widened, frayed, cut, bare, withRoom, formatted))
      .map(([a, shape]) => at(a, shape)),
  },
  { weight: 1, arbitrary: fc.nat({ max: 8 }).map((kept) => (args: readonly unknown[]) => args.slice(0, kept)) },
  { weight: 1, arbitrary: hostileArgument.map((more) => (args: readonly unknown[]) => [...args, more]) },
);

const oneLong = fc.tuple(place, longArgument).map(([a, argument]) => at(a, () => argument));

/** Calls of one function: hostile through and through, or within the limits but for up to three things. */
export function callsOf(calculation: Calculation): fc.Arbitrary<readonly unknown[]> {
  const count = parametersOf(calculation.inputs).length;
  const valid = validArguments(calculation);
  const changed = (changes: fc.Arbitrary<Change[]>) =>
    fc.tuple(valid, changes).map(([args, list]) => list.reduce<readonly unknown[]>((done, one) => one(done), args));
  return fc.oneof(
    { weight: 60, arbitrary: changed(fc.array(change, { maxLength: 3 })) },
    { weight: 39, arbitrary: fc.array(hostileArgument, { minLength: Math.max(0, count - 2), maxLength: count + 2 }) },
    { weight: 1, arbitrary: changed(oneLong.map((one) => [one])) },
  );
}
