import { ALL_IMPLEMENTED_FUNCTIONS_SET } from '../engine/formula.js';
import { ADDED } from './natives/corrected.js';

/** Whether the grid calculates a function that is not ours by this name, in capital letters. */
export const knowsFunction = (name: string): boolean =>
  ADDED.has(name) || ALL_IMPLEMENTED_FUNCTIONS_SET.has(name as Parameters<typeof ALL_IMPLEMENTED_FUNCTIONS_SET.has>[0]);
