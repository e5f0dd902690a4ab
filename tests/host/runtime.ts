import { readFileSync } from 'node:fs';
import { createContext, runInContext } from 'node:vm';
import type { Metadata } from '../../functions/metadata.js';
import { bridgeTo } from './bridge.js';
import { platformFile, surroundings } from './surroundings.js';

const built = (name: string): string => readFileSync(new URL(`../../dist/${name}`, import.meta.url), 'utf8');
const platform = platformFile('custom-functions-runtime.js');

export interface Shown {
  /** What the cells show: numbers, texts, and errors as `{ error, message }`. */
  readonly cells: readonly (readonly unknown[])[];
}

const shown = (value: unknown): unknown => {
  if (typeof value !== 'object' || value === null) return value;
  const { type, code, message } = value as { type?: string; code?: string; message?: string };
  return type === 'Error' ? { error: code, message } : value;
};

/**
 * The worksheet's own runtime, as it comes with office.js, with the built functions in it: what a host would ask through
 * its bridge is asked here, and what it would write into cells is read from the answer.
 */
export function startRuntime() {
  const { bridge, invoke } = bridgeTo();
  const scope = createContext(surroundings('custom-functions-runtime.js', bridge));
  scope.window = scope;
  runInContext(platform, scope, { filename: 'custom-functions-runtime.js' });
  runInContext(built('functions.js'), scope, { filename: 'functions.js' });
  const metadata = JSON.parse(built('functions.json')) as Metadata;
  const { mappings } = (scope.CustomFunctions as { _association: { mappings: Record<string, unknown> } })._association;

  /** Calls a function by id; arguments are cells, ranges, or undefined for one left out. */
  async function call(id: string, ...args: readonly unknown[]): Promise<Shown> {
    const told = metadata.functions.find((one) => one.id === id.toUpperCase());
    const parameters = (told?.parameters ?? []).map((parameter, index) => {
      const argument = args[index] ?? null;
      if (argument === null && !parameter.optional)
        throw new Error(`The host refuses ${id} without ${parameter.name}.`);
      // Every parameter is declared as a matrix; one that is left out is nothing at all.
      return argument === null || Array.isArray(argument) ? argument : [[argument]];
    });
    const value = await invoke(id, parameters);
    const matrix = (Array.isArray(value) ? value : [[value]]) as unknown[][];
    if (matrix.length === 0 || matrix.some((row) => row.length !== matrix[0]?.length))
      return { cells: [[{ error: '#CALC!' }]] };
    return { cells: matrix.map((row) => row.map(shown)) };
  }

  return { call, metadata, associated: Object.keys(mappings) };
}
