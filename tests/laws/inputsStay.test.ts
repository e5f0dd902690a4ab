import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../.config/properties.js';
import { catalogue } from '../../src/catalogue.js';
import { calculate } from '../../src/core/calculate.js';
import type { Calculation } from '../../src/core/calculation.js';
import { call } from '../functions/answers.js';
import { validArguments } from '../hostile/valid.js';

/** A change of anything frozen throws where it is made. */
function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null) Object.values(Object.freeze(value)).forEach(frozen);
  return value;
}

const exampleOf = ({ example }: Calculation) => structuredClone(example.given) as Record<string, unknown>;

/** The same with every series as an array of doubles, which cannot be frozen. */
const inDoubles = (given: Record<string, unknown>, { inputs }: Calculation) =>
  Object.fromEntries(
    Object.entries(given).map(([key, value]) => [
      key,
      inputs[key]?.kind === 'series' ? Float64Array.from(value as number[]) : value,
    ]),
  );

const all = catalogue.map((one) => [one.id, one] as const);

describe('what a calculation is given', () => {
  it.each(all)('is never changed by %s', (_, one) => {
    const given = frozen(exampleOf(one));
    const before = structuredClone(given);
    const answer = calculate(one, given as never);
    expect(answer).not.toHaveProperty('refused');
    expect(given).toEqual(before);
  });

  it.each(all)(
    'is never changed by %s where its series are arrays of doubles, and answers the same twice',
    (_, one) => {
      const given = inDoubles(exampleOf(one), one);
      const before = structuredClone(given);
      const first = calculate(one, given as never);
      expect(given).toEqual(before);
      expect(calculate(one, given as never)).toEqual(first);
      expect(first).toEqual(calculate(one, exampleOf(one) as never));
    },
  );

  it.each(all)('is never changed by %s in a cell, where hosts hand over ranges', (id, one) => {
    fc.assert(
      fc.property(validArguments(one), (args) => {
        const before = structuredClone(args);
        call(id, ...frozen(args));
        expect(args).toEqual(before);
      }),
      cases(20),
    );
  });
});
