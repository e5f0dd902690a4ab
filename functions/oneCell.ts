import type { Calculation } from '../src/core/calculation.js';
import { isOneCell } from '../src/core/evaluate.js';
import type { ChoiceInput, NumberInput } from '../src/core/input.js';
import { isRefused, readOmitted } from '../src/core/read.js';
import { definition } from '../src/core/units.js';
import type { Parameter } from './parameters.js';
import { recordOf } from './record.js';

type Reader = (argument: unknown) => unknown;

const UNREAD = Symbol('not read the short way');

/** What stands in an argument of one cell; anything else is no plain value. */
function onlyCell(argument: unknown): unknown {
  if (!Array.isArray(argument)) return argument;
  const row: unknown = argument.length === 1 ? argument[0] : undefined;
  return Array.isArray(row) && row.length === 1 ? row[0] : argument;
}

function numberReader(input: NumberInput): Reader {
  const [least, most] = input.limit;
  const { up, down, offset } = definition(input.unit);
  const omitted = readOmitted(input);
  return (argument) => {
    if (argument === null || argument === undefined) return isRefused(omitted) ? UNREAD : omitted;
    const cell = onlyCell(argument);
    return typeof cell === 'number' && cell >= least && cell <= most ? ((cell + offset) * up) / down : UNREAD;
  };
}

function choiceReader(input: ChoiceInput): Reader {
  const words = new Set<unknown>(input.of);
  const omitted = readOmitted(input);
  return (argument) => {
    if (argument === null || argument === undefined) return isRefused(omitted) ? UNREAD : omitted;
    const cell = onlyCell(argument);
    return words.has(cell) ? cell : UNREAD;
  };
}

/**
 * The commonest call, one number out of single cells that all serve, without ranges and errors in view.
 * @returns the answer, or undefined for everything that takes the long way: the long way then answers it whole.
 */
export function oneCellCall(
  calculation: Calculation,
  parameters: readonly Parameter[],
): (args: readonly unknown[]) => number[][] | undefined {
  const { output } = calculation;
  const long = () => undefined;
  if (output.kind !== 'number') return long;
  const readers: Reader[] = [];
  for (const { input } of parameters) {
    if (!isOneCell(input) || input.kind === 'text' || input.kind === 'cell') return long;
    readers.push(input.kind === 'number' ? numberReader(input) : choiceReader(input));
  }
  const keys = parameters.map(({ key }) => key);
  const record = recordOf(calculation);
  const { up, down, offset } = definition(output.unit);
  return (args) => {
    for (let i = 0; i < readers.length; i++) {
      const value = (readers[i] as Reader)(args[i]);
      if (value === UNREAD) return undefined;
      record[keys[i] as string] = value;
    }
    if (calculation.refuse?.(record as never) !== undefined) return undefined;
    const result: unknown = calculation.compute(record as never);
    if (typeof result !== 'number') return undefined;
    const shown = (result * down) / up - offset + 0;
    return Number.isFinite(shown) ? [[shown]] : undefined;
  };
}
