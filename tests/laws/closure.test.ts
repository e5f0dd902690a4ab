import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../.config/properties.js';
import { CellError, call } from '../functions/answers.js';
import { likelyPlan } from '../plan/anyPlan.js';
import { byLabel, type Changed, columnsOf, rowsOf } from '../plan/columns.js';
import { number } from './figures.js';

const PRICED = {
  aidPrice: 0.8,
  stabiliserPrice: 2.4,
  runWater: 150,
  waterPrice: 3.5,
  runEnergy: 500,
  energyPrice: 0.1,
  runBeerLoss: 6,
  beerValue: 30,
  runLabour: 3,
  labourPrice: 42,
  turnaround: 4,
  downtimeCost: 60,
  dryMatter: 0.25,
  yearVolume: 500_000,
};

/** Tries plans until enough of them have a run. */
function forEachRun(check: (plan: typeof PRICED & Changed) => void): void {
  let checked = 0;
  fc.assert(
    fc.property(likelyPlan, (values) => {
      const plan = { ...values, ...PRICED };
      if (call('RUNLENGTH', ...columnsOf(plan)) instanceof CellError) return;
      checked++;
      check(plan);
    }),
    cases(100),
  );
  expect(checked).toBeGreaterThan(10);
}

/** A year by item and by quantity: the last column of FILTRATIONCOST. */
function yearOf(plan: Changed): (label: string) => number {
  const rows = byLabel(rowsOf('FILTRATIONCOST', ...columnsOf(plan)));
  return (label) => {
    const value = rows.get(label)?.[1];
    if (value === undefined) throw new Error(`No row ${label}.`);
    return value;
  };
}

const near = (value: number, expected: number, scale = Math.abs(expected)) =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(1e-9 * scale);

describe('a year of filtration', () => {
  it('costs what it takes times the price, item by item', () => {
    forEachRun((plan) => {
      const year = yearOf(plan);
      near(year('Disposal'), year('Spent cake t') * (plan.disposalPrice as number));
      near(year('Water'), year('Water m³') * plan.waterPrice);
      near(year('Beer loss'), year('Beer lost hL') * plan.beerValue);
      near(year('Downtime'), year('Turnaround h') * plan.downtimeCost);
      near(year('Energy'), year('Runs') * plan.runEnergy * plan.energyPrice);
      near(year('Labour'), year('Runs') * plan.runLabour * plan.labourPrice);
      const powder = (year('Precoat') + year('Body feed')) / plan.aidPrice + year('Stabiliser') / plan.stabiliserPrice;
      near(year('Powder as bought t') * 1000, powder);
    });
  });

  it('takes the runs, powder and hours that the single functions give', () => {
    forEachRun((plan) => {
      const year = yearOf(plan);
      const report = new Map(rowsOf('RUNREPORT', ...columnsOf(plan)) as [string, number][]);
      const run = rowsOf('RUNLENGTH', ...columnsOf(plan))[0]?.[0];
      near(year('Runs'), number('RUNSPERYEAR', plan.yearVolume, run));
      const inAll = report.get('Powder in all g/hL') as number;
      // A tiny run takes more powder than any dose may be.
      if (inAll < 10_000) near(year('Powder as bought t'), number('YEARPOWDER', plan.yearVolume, inAll));
      near(year('Powder as bought t') * 1000, (report.get('Powder per run kg') as number) * year('Runs'));
      near(year('Filtering h'), (report.get('Run time h') as number) * year('Runs'));
      near(year('Filtering h') * (plan.flow as number), plan.yearVolume);
    });
  });

  it('is twice as dear for twice the beer, at the same cost of each hL', () => {
    forEachRun((plan) => {
      const once = rowsOf('FILTRATIONCOST', ...columnsOf(plan));
      const twice = rowsOf('FILTRATIONCOST', ...columnsOf({ ...plan, yearVolume: 2 * plan.yearVolume }));
      for (const [row, [item, perHl, perYear]] of once.slice(1).entries()) {
        const other = twice[row + 1] ?? [];
        expect([other[0], other[1]]).toEqual([item, perHl]);
        // What is missing of a year is no share of it.
        if (item !== 'Hours that one filter does not have h') near(Number(other[2]), 2 * Number(perYear));
      }
    });
  });
});

describe('a saving', () => {
  it('is present less proposed in every row, and its items add up to its total', () => {
    forEachRun((plan) => {
      const rows = rowsOf('SAVING', ...columnsOf(plan, { ...plan, bodyFeed: (plan.bodyFeed as number) / 2 + 20 }));
      const header = rows[0] as string[];
      const total = rows.findIndex(([item]) => item === 'Total');
      expect(total).toBeGreaterThan(5);
      const figures = rows.slice(1, total + 1).map((row) => row.slice(1).map(Number));
      for (const [present = 0, proposed = 0, saved] of figures)
        near(saved as number, present - proposed, present + proposed);
      for (const column of header.slice(1).keys()) {
        const items = figures.slice(0, -1).map((row) => row[column] as number);
        const size = items.reduce((sum, one) => sum + Math.abs(one), 0);
        near(
          items.reduce((sum, one) => sum + one, 0),
          figures.at(-1)?.[column] as number,
          size,
        );
      }
    });
  });
});
