import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COST_ITEMS } from '../../src/plan/cost.js';
import { PLAN } from '../../src/plan/table.js';
import { CellError, call } from '../functions/answers.js';
import { planMatrices } from './sheet.js';

const OWN = ['viscosity', 'beerSolids', 'bodyFeed', 'stabiliserDose'] as const;
const without = Object.fromEntries(OWN.map((key) => [key, undefined]));
const shared = planMatrices(without);
const beers = [
  [2.8, 25, 90, 60],
  [2.6, 22, 85, 55],
  [3.3, 36, 115, 0],
];
const columns = OWN.map((_, column) => beers.map((beer) => [beer[column]]));
const planOf = (beer: readonly (number | undefined)[]) =>
  planMatrices(Object.fromEntries(OWN.map((key, column) => [key, beer[column]])));

describe('BEERRUN and BEERCOST', () => {
  it('give each beer of a list what RUNLENGTH and FILTRATIONCOST give its own plan', () => {
    const runs = call('BEERRUN', ...shared, ...columns) as number[][];
    const totals = call('BEERCOST', ...shared, ...columns) as number[][];
    beers.forEach((beer, row) => {
      expect(runs[row]).toEqual((call('RUNLENGTH', ...planOf(beer)) as number[][])[0]);
      const table = call('FILTRATIONCOST', ...planOf(beer)) as (string | number)[][];
      expect(totals[row]?.[0]).toBeCloseTo(table.find(([item]) => item === 'Total')?.[1] as number, 12);
    });
  });

  it('make a table of beers and items', () => {
    const items = COST_ITEMS.map(({ label }) => label);
    const table = call('BEERCOST', ...shared, ...columns, [items]) as number[][];
    beers.forEach((beer, row) => {
      const costs = call('FILTRATIONCOST', ...planOf(beer)) as (string | number)[][];
      items.forEach((item, column) => {
        expect(table[row]?.[column]).toBeCloseTo(costs.find(([one]) => one === item)?.[1] as number, 12);
      });
    });
  });

  it('refuse one beer in its own place only, and a plan that all share everywhere', () => {
    const solids = [[25], ['22 g'], [36]];
    const answers = call('BEERCOST', ...shared, columns[0], solids, columns[2], columns[3]) as unknown[][];
    expect(answers.map(([one]) => one instanceof CellError)).toEqual([false, true, false]);
    expect(answers[1]?.[0]).toMatchObject({ message: expect.stringMatching(/^Beer solids is text, not a number/) });
    const noGel = planMatrices({ ...without, stabiliserPermeability: undefined });
    const needed = call('BEERCOST', ...noGel, ...columns) as unknown[][];
    expect(needed.map(([one]) => one instanceof CellError)).toEqual([true, true, false]);
    expect(call('BEERCOST', ...planMatrices({ ...without, area: undefined }), ...columns)).toMatchObject({
      message: expect.stringMatching(/^Values: "Filter area m²" is missing/),
    });
  });

  it('do not read what the shared plan says of a beer’s own figures', () => {
    expect(call('BEERCOST', ...planMatrices(), ...columns)).toEqual(call('BEERCOST', ...shared, ...columns));
    expect(Object.keys(PLAN)).toEqual(expect.arrayContaining([...OWN]));
  });

  it('agree with the functions of one plan for any beer', () => {
    fc.assert(
      fc.property(
        fc.tuple(
          fc.double({ min: 1, max: 5, noNaN: true }),
          fc.double({ min: 5, max: 80, noNaN: true }),
          fc.double({ min: 20, max: 300, noNaN: true }),
          fc.double({ min: 0, max: 150, noNaN: true }),
        ),
        (beer) => {
          const own = beer.map((value) => [[value]]);
          expect(call('BEERRUN', ...shared, ...own)).toEqual(call('RUNLENGTH', ...planOf(beer)));
        },
      ),
    );
  });
});
