import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { createContext, runInContext } from 'node:vm';
import type { Metadata } from '../../functions/metadata.js';
import { bridgeTo } from './bridge.js';

const read = (file: string | URL): string => readFileSync(file, 'utf8');
const built = (name: string): string => read(new URL(`../../dist/${name}`, import.meta.url));
const platform = read(createRequire(import.meta.url).resolve('@microsoft/office-js/dist/custom-functions-runtime.js'));

/** What the platform's runtime looks for in the page or engine that it is loaded into. */
const surroundings = () => ({
  console,
  // It gathers answers for a while before it hands them over; here nothing else is to come.
  setTimeout: (act: () => void) => setTimeout(act, 0),
  clearTimeout,
  document: {
    readyState: 'complete',
    addEventListener() {},
    createElement: () => ({ setAttribute() {} }),
    getElementsByTagName: (name: string) =>
      name === 'script' ? [{ src: '/custom-functions-runtime.js', getAttribute() {} }] : [{ appendChild() {} }],
  },
  location: { search: '', href: '' },
  navigator: { userAgent: '' },
  history: {},
  sessionStorage: { getItem: () => null, setItem() {} },
});

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
  const scope = createContext({ ...surroundings(), _richApiNativeBridge: bridge });
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
