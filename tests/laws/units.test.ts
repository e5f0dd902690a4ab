import { describe, expect, it } from 'vitest';
import { parametersOf } from '../../functions/parameters.js';
import { catalogue } from '../../src/catalogue.js';
import { evaluateCells, handOver } from '../../src/core/evaluate.js';
import { CONVERTIBLE } from '../../src/core/otherUnits.js';
import { definition, type Unit } from '../../src/core/units.js';
import { number } from './figures.js';

/** The units of one kind that a figure may come in, besides the cell's own. */
const others = (unit: Unit): readonly string[] =>
  CONVERTIBLE.flatMap(([name, { kind }]) => (kind === definition(unit).kind && name !== unit ? [name] : []));

/**
 * Functions that answer with numbers. A text may turn at its bound, and the reports of fits hold standard errors, which
 * are nothing but rounding where an example lies on its line.
 */
const NUMBERS = catalogue.filter(({ output: { kind } }) => kind === 'number' || kind === 'row');

const CASES = NUMBERS.flatMap((one) =>
  parametersOf(one.inputs).flatMap(({ key, input }) => {
    const given = (one.example.given as Readonly<Record<string, unknown>>)[key];
    if ((input.kind !== 'number' && input.kind !== 'series') || given === undefined) return [];
    return others(input.unit).length > 0 ? [[one.id, key, one, input.unit, given] as const] : [];
  }),
);

describe('a figure in another unit, brought by TOUNIT into the unit of the cell,', () => {
  it('is tried for many inputs', () => {
    expect(CASES.length).toBeGreaterThan(70);
  });

  it.each(CASES)('leaves the answer of %s as it was: %s', (_, key, calculation, unit, given) => {
    const answerFor = (value: unknown) =>
      evaluateCells(calculation, handOver(calculation.inputs, { ...calculation.example.given, [key]: value })) as [
        unknown,
      ][];
    const before = answerFor(given).flat();
    for (const other of others(unit)) {
      const through = (value: number) => number('TOUNIT', number('TOUNIT', value, unit, other), other, unit);
      const after = answerFor(Array.isArray(given) ? given.map(through) : through(given as number)).flat();
      expect(after.length, other).toBe(before.length);
      for (const [place, value] of before.entries()) {
        if (typeof value !== 'number') expect(after[place], other).toEqual(value);
        else
          expect(Math.abs((after[place] as number) - value), other).toBeLessThanOrEqual(1e-9 * Math.abs(value) + 1e-9);
      }
    }
  });
});
