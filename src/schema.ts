import * as z from 'zod/mini';
import type { Calculation } from './core/calculation.js';
import { isOneCell } from './core/evaluate.js';
import type { Bounds, Cell, Input, OneCellInput } from './core/input.js';
import { isRefused, readCell } from './core/read.js';
import { spanInWords } from './core/wording.js';

/**
 * The shape that a form or a file must have to serve as a calculation's inputs, derived from the declaration.
 * Cells never pass through here: a loop over the declaration is quicker, and says the same.
 */
const bounded = ({ limit: [least, most], unit }: Bounds) => {
  const error = `must be ${spanInWords([least, most], unit)}`;
  return z.number({ error }).check(z.gte(least, { error }), z.lte(most, { error }));
};

function oneCell(input: OneCellInput): z.ZodMiniType {
  switch (input.kind) {
    case 'number':
      return input.preset !== undefined || input.optional ? z.optional(bounded(input)) : bounded(input);
    case 'cell':
      return z.any();
    default: {
      const serves = z.string().check(z.refine((text: string) => !isRefused(readCell(input, text as Cell))));
      return 'preset' in input && input.preset !== undefined ? z.optional(serves) : serves;
    }
  }
}

function whole(input: Exclude<Input, OneCellInput>): z.ZodMiniType {
  if (input.kind === 'names') return z.array(z.string());
  if (input.kind === 'series') {
    const series = z.array(bounded(input)).check(z.minLength(input.oneForAll ? 1 : input.least));
    return input.optional ? z.optional(series) : series;
  }
  const labels = Object.fromEntries(Object.values(input.table).map((one) => [one.label, z.optional(bounded(one))]));
  return z.strictObject(
    Object.fromEntries(Object.keys(input.columns).map((column) => [column, z.strictObject(labels)])),
  );
}

/** @returns a zod object with one entry an input, numbers in the input's own unit. */
export function schemaOf({ inputs }: Pick<Calculation, 'inputs'>) {
  return z.strictObject(
    Object.fromEntries(
      Object.entries(inputs).map(([key, input]) => [key, isOneCell(input) ? oneCell(input) : whole(input)]),
    ),
  );
}
