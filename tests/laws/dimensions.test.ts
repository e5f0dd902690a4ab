import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue.js';
import type { Calculation } from '../../src/core/calculation.js';
import { answer, handOver, isNoAnswer, readCells } from '../../src/core/evaluate.js';
import type { Input, PlanInput } from '../../src/core/input.js';
import type { Fields } from '../../src/core/output.js';
import { isRefused } from '../../src/core/read.js';
import { definition, UNITS, type Unit } from '../../src/core/units.js';
import { DIMENSIONS, type Dimension, growth } from './dimensions.js';

/** Functions whose formula holds a figure with a dimension of its own, or that answer with words about units. */
const WITHOUT: Readonly<Record<string, string>> = {
  WATERVISCOSITY: 'water has a viscosity',
  WATERDENSITY: 'water has a density',
  POLYPHENOLS: '820 mg/L for each unit of absorbance',
  FITCOMPRESSION: 'a reference pressure of 1 bar',
  FITCAKE: 'a reference pressure of 1 bar',
  FITCAKES: 'a reference pressure of 1 bar',
  DUSTAVERAGE: 'a shift of 8 h',
  SULPHITELABEL: 'a bound of 10 mg/L, and a text',
  HAZEGRADE: 'bounds in EBC, and a text',
  TOUNIT: 'its units are texts',
  SAFERANGE: 'its units are texts',
  RANGECHECK: 'a text',
  PLANCHECK: 'a text',
};

const kindOf = (unit: Unit): string => definition(unit).kind;

const factorOf = (unit: Unit, factors: Dimension): number => growth(kindOf(unit), factors);

/** The values of one plan's column, each in the smaller units. */
const grownPlan = (table: PlanInput['table'], values: Readonly<Record<string, number | undefined>>, by: Dimension) =>
  Object.fromEntries(
    Object.entries(values).map(([key, value]) => {
      const label = table[key];
      return [key, value === undefined || !label ? value : value * factorOf(label.unit, by)];
    }),
  );

function grownInput(input: Input, value: unknown, by: Dimension): unknown {
  if (input.kind === 'number') return value === undefined ? value : (value as number) * factorOf(input.unit, by);
  if (input.kind === 'series') return (value as Float64Array | undefined)?.map((one) => one * factorOf(input.unit, by));
  if (input.kind !== 'plan') return value;
  return Object.fromEntries(
    Object.entries(value as Record<string, Record<string, number>>).map(([column, values]) => [
      column,
      grownPlan(input.table, values, by),
    ]),
  );
}

/** The figures of an answer by name, brought back to the greater units. */
function figures({ output }: Calculation, result: unknown, by: Dimension): Record<string, unknown> {
  if (output.kind === 'number') return { answer: (result as number) / factorOf(output.unit, by) };
  const fields = (output as { fields: Fields }).fields;
  const all = (output.kind === 'table' ? result : [result]) as Record<string, unknown>[];
  // Below the costs of a table stand amounts that leave one column empty, each in the unit of its own label.
  const rows = all.filter(
    (row) => output.kind !== 'table' || Object.keys(fields).every((key) => row[key] !== undefined),
  );
  const entries = rows.flatMap((row, place) =>
    Object.entries(fields).flatMap(([key, field]): [string, unknown][] => {
      if ('text' in field) return [];
      const shrunk = (value: unknown) => (typeof value === 'number' ? value / factorOf(field.unit, by) : value);
      const value = row[key];
      if (!field.error) return [[`${key} ${place}`, shrunk(value)]];
      const { value: estimate, error } = value as { value: number; error: number | undefined };
      return [
        [`${key} ${place}`, shrunk(estimate)],
        // Readings that lie on the line have an error of nothing but rounding.
        [`${key} error ${place}`, typeof error === 'number' && error < 1e-9 * Math.abs(estimate) ? 0 : shrunk(error)],
      ];
    }),
  );
  return Object.fromEntries(entries);
}

const solved = (calculation: Calculation, by: Dimension): Record<string, unknown> => {
  const si = readCells(calculation, handOver(calculation.inputs, calculation.example.given as never));
  if (isRefused(si)) throw new Error(si.refused);
  const grown = Object.fromEntries(
    Object.entries(calculation.inputs).map(([key, input]) => [key, grownInput(input, si[key], by)]),
  );
  const result = answer(calculation, grown);
  if (isRefused(result) || isNoAnswer(result)) throw new Error(JSON.stringify(result));
  return figures(calculation, result, by);
};

const ONES: Dimension = [1, 1, 1, 1, 1];
const SMALLER: readonly (readonly [string, Dimension])[] = [
  ['mass', [8, 1, 1, 1, 1]],
  ['length', [1, 4, 1, 1, 1]],
  ['time', [1, 1, 16, 1, 1]],
  ['money', [1, 1, 1, 32, 1]],
  ['haze', [1, 1, 1, 1, 2]],
  ['all of them', [3, 5, 7, 11, 13]],
];

describe('dimensions', () => {
  it('are known of every unit, and of no kind that no unit has', () => {
    const kinds = new Set(Object.values(UNITS).map(({ kind }) => kind as string));
    expect([...kinds].sort()).toEqual(Object.keys(DIMENSIONS).sort());
  });

  it('are left aside only for functions that exist', () => {
    const ids: readonly string[] = catalogue.map(({ id }) => id);
    for (const id of Object.keys(WITHOUT)) expect(ids).toContain(id);
  });

  it.each(catalogue.filter(({ id }) => !(id in WITHOUT)).map((one) => [one.id, one] as const))(
    '%s gives the same answer whatever the size of the base units',
    (_, calculation) => {
      const before = solved(calculation, ONES);
      expect(Object.keys(before).length).toBeGreaterThan(0);
      for (const [base, factors] of SMALLER) {
        const after = solved(calculation, factors);
        expect(Object.keys(after)).toEqual(Object.keys(before));
        for (const [name, value] of Object.entries(before)) {
          // The readings of an example that lie on its line leave a residual of nothing but rounding.
          if (name.startsWith('residual') && (value as number) < 1e-6) expect(after[name]).toBeLessThan(1e-6);
          else if (typeof value !== 'number') expect(after[name], `${name}, ${base}`).toBe(value);
          else
            expect(Math.abs((after[name] as number) - value), `${name}, ${base}`).toBeLessThanOrEqual(
              1e-7 * Math.abs(value),
            );
        }
      }
    },
  );
});
