import type { NumberInput } from './core/input.js';

/**
 * A quantity of the trade that more than one calculation reads. Limits keep out what cannot be, bench sizes
 * included; `usual` marks the trade's habit.
 */
export const quantity = <const Q extends Omit<NumberInput, 'kind'>>(declared: Q) =>
  ({ kind: 'number', ...declared }) as const;

/** Source of limits that no rule of the trade stands behind. */
export const SLIPS = 'The limits only keep out slips of the keyboard; the figure is your own.';
