import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cell, sentence } from '../checks/worksheet.js';
import { byLabel, columnsOf, rowsOf } from '../plan/columns.js';

describe('DISPOSALCOST', () => {
  const hauls = (kilograms: number, load: number) => cell('DISPOSALCOST', kilograms, 0, load, 1);

  it('pays a price per t and whole loads', () => {
    // By hand: 65 t × 70 = 4550, and 7 loads of 10 t at 150 = 1050.
    expect(cell('DISPOSALCOST', 65_000, 70, 10, 150)).toBe(5600);
  });

  it('hauls nothing where there is nothing', () => {
    expect(hauls(0, 10)).toBe(0);
    expect(cell('DISPOSALCOST', 0, 70, 10, 150)).toBe(0);
  });

  it('hauls once for a little, and once more for a little more than a load', () => {
    expect(hauls(0.001, 10)).toBe(1);
    expect(hauls(10_000, 10)).toBe(1);
    expect(hauls(10_001, 10)).toBe(2);
  });

  it('takes a whole number of loads for what it is, however it was rounded', () => {
    for (const load of [0.1, 0.3, 0.7, 1.1, 8.2, 12.6]) {
      for (let count = 1; count <= 60; count++) {
        expect(hauls(load * 1000 * count, load)).toBe(count);
        let summed = 0;
        for (let one = 0; one < count; one++) summed += load * 1000;
        expect(hauls(summed, load)).toBe(count);
      }
    }
  });

  it('takes a load left blank for hauls within the price, and refuses hauls without a load', () => {
    expect(cell('DISPOSALCOST', 65_000, 70)).toBe(4550);
    expect(sentence('DISPOSALCOST', 65_000, 70, 0, 150)).toMatch(/^#VALUE! Load must be given with a Haul/);
  });

  it('never gets cheaper by more cake', () => {
    const kilograms = fc.double({ min: 0, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(kilograms, kilograms, fc.double({ min: 0.1, max: 50, noNaN: true }), (one, more, load) => {
        const cost = (wet: number) => cell('DISPOSALCOST', wet, 70, load, 150) as number;
        expect(cost(one + more)).toBeGreaterThanOrEqual(cost(one) * (1 - 1e-12));
      }),
    );
  });
});

describe('a year by single functions', () => {
  it('agrees with FILTRATIONCOST of the invented plan', () => {
    const year = byLabel(rowsOf('FILTRATIONCOST', ...columnsOf({})));
    const yearly = (label: string) => year.get(label)?.[1] as number;
    const run = rowsOf('RUNLENGTH', ...columnsOf({}))[0]?.[0] as number;
    const powder = (cell('POWDERPERHL', 40, 90, run) as number) + 60;
    expect(cell('RUNSPERYEAR', 500_000, run)).toBeCloseTo(yearly('Runs'), 9);
    expect(cell('YEARPOWDER', 500_000, powder)).toBeCloseTo(yearly('Powder as bought t'), 9);
    // Dry on the filter: 39.8 kg of precoat, and 89.55 + 21 g of powder and 25 g of beer solids a hL.
    const wet = cell('SPENTCAKE', 39.8 + 0.11055 * run, 0.25, 0.025 * run) as number;
    expect((wet * yearly('Runs')) / 1000).toBeCloseTo(yearly('Spent cake t'), 9);
    expect(cell('DISPOSALCOST', wet, 70)).toBeCloseTo(((year.get('Disposal')?.[0] as number) * run) as number, 9);
  });

  it('does not round the runs', () => {
    expect(cell('RUNSPERYEAR', 5000, 2000)).toBe(2.5);
  });

  it('refuses cake without dry matter, and dry matter in percent', () => {
    expect(sentence('SPENTCAKE', 100, 0)).toMatch(/^#VALUE! Spent cake dry matter must be .* blank or 0\.$/);
    expect(sentence('SPENTCAKE', 100, 25)).toContain('For 25 percent write 25 % or 0.25.');
  });
});
