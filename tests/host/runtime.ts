import { readFileSync } from 'node:fs';
import { createContext, runInContext } from 'node:vm';
import type { Metadata } from '../../functions/metadata.js';

/** The error class of the worksheet host, as its documents describe it. */
class HostError {
  constructor(
    readonly code: string,
    readonly message?: string,
  ) {}
}

type Bound = (...args: readonly unknown[]) => unknown;

export interface Shown {
  /** What the cells show: numbers, texts, and errors as `{ error, message }`. */
  readonly cells: readonly (readonly unknown[])[];
}

const built = (name: string): string => readFileSync(new URL(`../../dist/${name}`, import.meta.url), 'utf8');

/**
 * A host like the worksheet's own runtime: it loads the built script into a bare global scope with no DOM, reads the
 * built metadata, marshals arguments as that says, and passes what comes back through JSON as the runtime does.
 */
export function startRuntime() {
  const bound = new Map<string, Bound>();
  const scope = createContext({
    CustomFunctions: { Error: HostError, associate: (id: string, fn: Bound) => bound.set(id, fn) },
  });
  runInContext(built('functions.js'), scope, { filename: 'functions.js' });
  const metadata = JSON.parse(built('functions.json')) as Metadata;

  const marshal = (argument: unknown): unknown => {
    if (argument === undefined || argument === null) return null;
    return Array.isArray(argument) ? argument : [[argument]];
  };

  const shown = (value: unknown): unknown => {
    if (value instanceof HostError) return { error: value.code, message: value.message };
    return JSON.parse(JSON.stringify(value) ?? 'null') as unknown;
  };

  /** Calls a function by id; arguments are cells, ranges, or undefined for one left out. */
  const call = (id: string, ...args: readonly unknown[]): Shown => {
    const told = metadata.functions.find((one) => one.id === id);
    const fn = bound.get(id);
    if (!told || !fn) throw new Error(`The host knows no ${id}.`);
    const marshalled = told.parameters.map((parameter, index) => {
      if (args[index] === undefined && !parameter.optional)
        throw new Error(`The host refuses ${id} without ${parameter.name}.`);
      return marshal(args[index]);
    });
    const result = fn(...marshalled, { address: 'Sheet1!A1', functionName: id });
    const matrix = Array.isArray(result) ? (result as unknown[][]) : [[result]];
    if (matrix.length === 0 || matrix.some((row) => row.length !== matrix[0]?.length))
      return { cells: [[{ error: '#CALC!' }]] };
    return { cells: matrix.map((row) => row.map(shown)) };
  };

  return { call, metadata, associated: [...bound.keys()] };
}
