import type { Calculation } from '../src/core/calculation.js';

/** A calculation's inputs in SI, by key. */
export type Values = Record<string, unknown>;

const records = new WeakMap<Calculation, Values>();

/**
 * One record a calculation, kept from call to call, every key in declared order: were its hidden class to die with a
 * call, the machine code made for it would die at the next garbage collection. What it holds is left from the last call.
 */
export function recordOf(calculation: Calculation): Values {
  const kept = records.get(calculation);
  if (kept) return kept;
  const record: Values = {};
  for (const key of Object.keys(calculation.inputs)) record[key] = undefined;
  records.set(calculation, record);
  return record;
}
