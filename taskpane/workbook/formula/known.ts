import { ALL_IMPLEMENTED_FUNCTIONS_SET } from '../engine/formula.js';

/** Whether the grid's engine calculates a function of its own by this name, in capital letters. */
export const knowsFunction = (name: string): boolean =>
  ALL_IMPLEMENTED_FUNCTIONS_SET.has(name as Parameters<typeof ALL_IMPLEMENTED_FUNCTIONS_SET.has>[0]);
