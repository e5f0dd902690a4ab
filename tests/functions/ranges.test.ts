import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue.js';
import type { Calculation } from '../../src/core/calculation.js';
import { evaluateCells, isNoAnswer, isOneCell } from '../../src/core/evaluate.js';
import type { Cell, OneCellInput } from '../../src/core/input.js';
import { isRefused } from '../../src/core/read.js';
import { CellError, call } from './answers.js';

const DIVIDED = new CellError('#DIV/0!');

type RangeCell = Cell | CellError;
type Range = readonly (readonly RangeCell[])[];

/** Mostly cells that serve; some that do not, and an error from elsewhere. */
function cellOf(input: OneCellInput): fc.Arbitrary<RangeCell> {
  const wrong = fc.constantFrom<RangeCell>('65 %', '', null, true, -1, 1e300, DIVIDED);
  if (input.kind === 'choice') return fc.oneof({ weight: 8, arbitrary: fc.constantFrom(...input.of) }, wrong);
  if (input.kind !== 'number') return fc.oneof(fc.constantFrom('hL', 'kg', 'DRYMASS', 'Mass'), wrong);
  const [least, most] = input.limit;
  const serves = fc.oneof(fc.double({ min: least, max: most, noNaN: true }), fc.constantFrom(least, most));
  return fc.oneof({ weight: 8, arbitrary: serves }, wrong);
}

const sides = fc.constantFrom(1, 1, 2, 3);

const rangeOf = (input: OneCellInput): fc.Arbitrary<Range> =>
  fc.tuple(sides, sides).chain(([rows, columns]) =>
    fc.array(fc.array(cellOf(input), { minLength: columns, maxLength: columns }), {
      minLength: rows,
      maxLength: rows,
    }),
  );

/** One place of the answer, told from one case without any range in it. */
function expected(one: Calculation, ranges: readonly Range[], row: number, column: number): unknown {
  const given: Record<string, Cell> = {};
  for (const [index, [key, { label }]] of Object.entries(one.inputs).entries()) {
    const range = ranges[index] as Range;
    const width = range[0]?.length ?? 0;
    const cell = range[range.length === 1 ? 0 : row]?.[width === 1 ? 0 : column];
    if (cell === undefined) {
      const size = `${range.length} rows × ${width} columns`;
      return new CellError('#N/A', `This place lies outside ${label}, which has ${size}.`);
    }
    if (cell instanceof CellError) return cell;
    given[key] = cell === '' ? null : cell;
  }
  const answer = evaluateCells(one, given);
  if (isRefused(answer)) return new CellError('#VALUE!', answer.refused);
  const [[only] = []] = isNoAnswer(answer) ? [[answer]] : answer;
  return isNoAnswer(only) ? new CellError('#N/A', only.none) : only;
}

describe('a range in a worksheet function', () => {
  for (const one of catalogue) {
    const inputs = Object.values(one.inputs);
    if (!inputs.every(isOneCell) || (one.output.kind !== 'number' && one.output.kind !== 'text')) continue;
    it(`gives ${one.id} in each place what its cells alone would give`, () => {
      fc.assert(
        fc.property(fc.tuple(...inputs.map(rangeOf)), (ranges) => {
          const rows = Math.max(...ranges.map((range) => range.length));
          const columns = Math.max(...ranges.map(([first]) => first?.length ?? 0));
          const answer = call(one.id, ...ranges);
          const places = Array.from({ length: rows }, (_, row) =>
            Array.from({ length: columns }, (_, column) => expected(one, ranges, row, column)),
          );
          const [[alone] = []] = places;
          expect(answer).toEqual(rows * columns === 1 && alone instanceof CellError ? alone : places);
        }),
        { numRuns: 200 },
      );
    });
  }
});
