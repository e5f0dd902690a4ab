import { describe, expect, it } from 'vitest';
import * as z from 'zod/mini';
import { metadata } from '../../functions/metadata.js';

/** Our own reading of what the host accepts; the published schema is older than the options used here. */
const matrix = { type: z.literal('any'), dimensionality: z.literal('matrix') };
const hostSchema = z.strictObject({
  allowErrorForDataTypeAny: z.literal(true),
  allowCustomDataForDataTypeAny: z.literal(true),
  functions: z.array(
    z.strictObject({
      id: z.string().check(z.regex(/^[A-Z][A-Z0-9_.]{2,127}$/)),
      name: z.string().check(z.minLength(3), z.maxLength(128)),
      description: z.string().check(z.minLength(10), z.maxLength(255)),
      helpUrl: z.url(),
      parameters: z.array(
        z.strictObject({
          name: z.string().check(z.regex(/^[a-z][A-Za-z0-9]*$/)),
          description: z.string().check(z.minLength(10)),
          ...matrix,
          optional: z.optional(z.literal(true)),
        }),
      ),
      result: z.strictObject(matrix),
    }),
  ),
});

describe('the metadata for the host', () => {
  it('has the form that the host accepts', () => {
    const parsed = hostSchema.safeParse(metadata('https://powder.example'));
    expect(parsed.error?.issues).toBeUndefined();
  });

  it('points help at the address where the add-in is hosted', () => {
    const [first] = metadata('https://powder.example').functions;
    expect(first?.helpUrl).toBe('https://powder.example/functions.html#drymass');
  });

  it('tells of each input what it is, its limits with the unit, and its preset', () => {
    const swap = metadata('https://powder.example').functions.find(({ id }) => id === 'SWAPDOSE');
    expect(swap?.parameters[3]).toMatchObject({
      name: 'position',
      optional: true,
      description: expect.stringContaining('Position (a fraction from 0 to 1; preset 0.5): '),
    });
  });
});
