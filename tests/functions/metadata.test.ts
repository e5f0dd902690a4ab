import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import * as z from 'zod/mini';
import { developmentAddress } from '../../.config/address.js';
import { path } from '../../.config/paths.js';
import { german } from '../../functions/german/index.js';
import { metadata } from '../../functions/metadata.js';
import { english } from '../../functions/words.js';

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

  it.each([
    ['docs/functions.json', english],
    ['docs/functions.de.json', german],
  ])('is the committed snapshot %s', (file, words) => {
    expect(metadata(developmentAddress, words)).toEqual(JSON.parse(readFileSync(path(file), 'utf8')));
  });

  it('names no parameter as optional that must be given', () => {
    const needed = metadata('').functions.map(({ parameters }) =>
      parameters.findLastIndex(({ optional }) => !optional),
    );
    for (const [index, { parameters }] of metadata('').functions.entries()) {
      expect(parameters.slice(0, needed[index]).every(({ optional }) => !optional)).toBe(true);
    }
  });
});

describe('German words for units and choices', () => {
  it('write numbers with a comma and money as Geld', () => {
    expect(german.span([0, 0.999], 'fraction')).toBe('ein Anteil von 0 bis 0,999');
    expect(german.span([0, 1.5], '')).toBe('von 0 bis 1,5');
    expect(german.span([0, 2], 'as given')).toBe('von 0 bis 2');
    expect(german.span([0, 2], 'money/kg')).toBe('von 0 bis 2 Geld/kg');
    expect(german.anyOf(['a'])).toBe('a');
    expect(german.anyOf(['a', 'b', 'c'])).toBe('a, b oder c');
    expect(german.preset(0.5)).toBe('Vorgabe 0,5');
    expect(german.preset('hydrogel')).toBe('Vorgabe hydrogel');
    expect(english.preset(0.5)).toBe('preset 0.5');
    expect(english.preset('hydrogel')).toBe('preset hydrogel');
  });
});
