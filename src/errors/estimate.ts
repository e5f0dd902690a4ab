import type { Estimate } from '../core/output.js';
import type { Uncertain } from '../numerics/mixedErrors.js';

/** A fitted figure and its standard error, both times a factor. */
export const scaled = (value: number, error: number | undefined, factor = 1): Estimate => ({
  value: value * factor,
  error: error === undefined ? undefined : error * Math.abs(factor),
});

/** A figure whose logarithm was fitted. */
export function fromLogarithm(logarithm: number, error: number | undefined): Estimate {
  const value = Math.exp(logarithm);
  return { value, error: error === undefined ? undefined : value * error };
}

/** A fitted figure that is so many of what was fitted. */
export const estimate = (value: number, uncertain: Uncertain | undefined, factor = 1): Estimate => ({
  value: value * factor,
  error: uncertain && uncertain.error * Math.abs(factor),
});
