import { ALL_IMPLEMENTED_FUNCTIONS, type BaseFunction } from '../../engine/formula.js';

export type FunctionClass = new (name: string) => BaseFunction;

/** The engine's own class behind a name, so that a correction changes only what is wrong in it. */
export function engineClass(name: string): FunctionClass {
  const found = ALL_IMPLEMENTED_FUNCTIONS.find(([, known]) => known === name);
  if (!found) throw new Error(`The engine has no function ${name}.`);
  return found[0] as FunctionClass;
}
