import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Script } from 'node:vm';
import { dist } from '../paths.js';

export type Bound = (...args: unknown[]) => unknown[][];

class HostError {
  constructor(
    readonly code: string,
    readonly message?: string,
  ) {}
}

/** The worksheet functions of the build, loaded as the host loads them. */
export function builtFunctions(): (id: string) => Bound {
  const bound = new Map<string, Bound>();
  const associate = (id: string, one: Bound) => bound.set(id, one);
  Object.assign(globalThis, { CustomFunctions: { Error: HostError, associate } });
  new Script(readFileSync(join(dist, 'functions.js'), 'utf8')).runInThisContext();
  return (id) => {
    const one = bound.get(id);
    if (!one) throw new Error(`The built functions have no ${id}.`);
    return one;
  };
}

/** A column of cells, as the host hands it over. */
export const column = <C>(rows: number, cell: (row: number) => C): C[][] =>
  Array.from({ length: rows }, (_, row) => [cell(row)]);
