import fc from 'fast-check';
import { type Parameter, parametersOf } from '../../functions/parameters.js';
import type { Calculation } from '../../src/core/calculation.js';
import type { Bounds, Input } from '../../src/core/input.js';
import { CONVERTIBLE } from '../../src/core/otherUnits.js';
import { PLAN } from '../../src/plan/table.js';
import { likelyPlan, planWithinLimits, within } from '../plan/anyPlan.js';
import { type Changed, columnsOf } from '../plan/columns.js';

type Matrix = unknown[][];

const column = (cells: readonly unknown[]): Matrix => cells.map((cell) => [cell]);

const KINDS = [...new Set(CONVERTIBLE.map(([, { kind }]) => kind))];

/** What the arguments of one call have in common: the length of its series, what they hold, the kind of its units. */
interface Call {
  readonly length: number;
  readonly readings: 'any' | 'rising' | 'example';
  readonly kind: string;
}

const callOf: fc.Arbitrary<Call> = fc.record({
  length: fc.integer({ min: 2, max: 12 }),
  readings: fc.constantFrom('any', 'rising', 'example', 'example'),
  kind: fc.constantFrom(...KINDS),
});

/** Words that the text inputs know, by the key of the input. */
const WORDS: Readonly<Record<string, readonly string[]>> = {
  function: ['BODYFEED', 'POWDER.BODYFEED', 'RUNLENGTH', 'swaprange', 'LADDERFIT'],
  input: ['Body feed', 'Beer flow', 'dose', 'From', 'Hazes', 'Filter area m²', 'Labels'],
};

function wordsOf(key: string, { kind }: Call): readonly unknown[] {
  const units = CONVERTIBLE.flatMap(([name, definition]) => (definition.kind === kind ? [name] : []));
  return key === 'from' || key === 'to' ? units : (WORDS[key] ?? ['some text', 90, 0.65, true, null]);
}

/** Large counts of samples and points only cost time. */
const bounded = ({ limit: [least, most] }: Bounds, key: string): readonly [number, number] =>
  key === 'samples' || key === 'points' ? [least, Math.min(most, least + 60)] : [least, most];

/** A number as likely from the trade's usual range as from the whole of its limits. */
const numberOf = (input: Bounds, key: string): fc.Arbitrary<number> => {
  const limits = within(bounded(input, key));
  const number = input.usual ? fc.oneof(within(input.usual), limits) : limits;
  return key === 'samples' || key === 'points' || key === 'seed' ? number.map(Math.round) : number;
};

function oneCell(key: string, input: Input, call: Call): fc.Arbitrary<unknown> {
  if (input.kind === 'number') return numberOf(input, key);
  return fc.constantFrom<unknown>(...(input.kind === 'choice' ? input.of : wordsOf(key, call)));
}

/** The example's own readings a little disturbed, or any that the limits allow. */
function series(example: readonly number[] = [], input: Bounds, { length, readings }: Call): fc.Arbitrary<Matrix> {
  const some = (one: fc.Arbitrary<number>, rows: number) => fc.array(one, { minLength: rows, maxLength: rows });
  if (readings !== 'example' || example.length === 0) {
    const any = some(within(input.limit), length);
    return (readings === 'any' ? any : any.map((values) => values.sort((a, b) => a - b))).map(column);
  }
  const rows = Math.min(example.length, Math.max(length, 4));
  return some(fc.double({ min: 0.99, max: 1.01, noNaN: true }), rows).map((factors) =>
    // A number of a thing, such as of a run, stays whole: disturbed, each row would be a thing of its own.
    column(factors.map((factor, row) => (input.unit === '' ? 1 : factor) * (example[row] as number))),
  );
}

const keys = Object.keys(PLAN).filter((key) => key !== 'yearVolume') as (keyof Changed)[];

/** Plans beside each other: one plan, some of its labels growing from column to column. */
function plans(columns: number): fc.Arbitrary<Matrix[]> {
  const base = fc.oneof(fc.constant({}), likelyPlan, planWithinLimits) as fc.Arbitrary<Changed>;
  const growth = fc.array(fc.double({ min: 0.7, max: 1.4, noNaN: true }), { minLength: columns, maxLength: columns });
  return fc.tuple(base, fc.subarray(keys, { maxLength: 4 }), growth).map(([values, changed, factors]) => {
    const ascending = [...factors].sort((a, b) => a - b);
    const grown = (factor: number): Changed => {
      const entries = changed.map((key) => {
        const [least, most] = PLAN[key].limit;
        const value = values[key];
        return [key, value === undefined ? undefined : Math.min(most, Math.max(least, value * factor))] as const;
      });
      return { ...values, ...Object.fromEntries(entries.filter(([, value]) => value !== undefined)) };
    };
    return columnsOf(...ascending.map(grown));
  });
}

/** The arguments of one call, all within the limits, as matrices. */
export function validArguments({ inputs, example }: Calculation): fc.Arbitrary<unknown[]> {
  const parameters = parametersOf(inputs);
  const given = example.given as Readonly<Record<string, unknown>>;
  const planColumns = parameters.filter(({ column: name }) => name !== undefined).length;
  return callOf.chain((call) =>
    fc
      .tuple(
        fc.tuple(...parameters.map((one) => argument(one, given[one.key], call))),
        planColumns > 0 ? plans(planColumns) : fc.constant([]),
      )
      .map(([own, columns]) => {
        let next = 0;
        return parameters.map(({ input }, index) => (input.kind === 'plan' ? columns[next++] : own[index]));
      }),
  );
}

function argument({ key, input }: Parameter, example: unknown, call: Call): fc.Arbitrary<unknown> {
  if (input.kind === 'plan') return fc.constant(null);
  if (input.kind === 'series') return series(example as readonly number[] | undefined, input, call);
  if (input.kind === 'names') {
    return fc.array(fc.string({ maxLength: 8 }), { minLength: call.length, maxLength: call.length }).map(column);
  }
  return oneCell(key, input, call).map((cell) => [[cell]]);
}
