import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../.config/properties.js';
import { isNoAnswer } from '../../src/core/evaluate.js';
import { fromSI, toSI } from '../../src/core/units.js';
import { costOf } from '../../src/plan/cost.js';
import { runsOf } from '../../src/plan/feed.js';
import { CellError, call } from '../functions/answers.js';
import { likelyPlan } from './anyPlan.js';
import { runPlan } from './runPlan.js';
import { planMatrices } from './sheet.js';

type Report = Readonly<Record<string, number>>;
type Changed = Parameters<typeof runPlan>[0];

const report = (id: string, changed: Changed, ...rest: unknown[]): Report => {
  const answer = call(id, ...planMatrices(changed), ...rest);
  if (!Array.isArray(answer)) throw new Error(JSON.stringify(answer));
  return Object.fromEntries(answer);
};

/** Cost per hL at a body feed in g/hL, by the cost of its run alone. */
function costs(changed: Changed): (dose: number) => number {
  const plan = runPlan(changed);
  const runs = runsOf(plan);
  if (isNoAnswer(runs)) throw new Error(runs.none);
  return (dose) => fromSI(costOf(plan, runs(toSI(dose, 'g/hL'))), 'money/hL');
}

const BEST = 'Body feed of least cost g/hL';
const LEAST = 'Least cost per hL';
const FROM = 'Within 1 % of the least cost from g/hL';
const TO = 'Within 1 % of the least cost to g/hL';

const runnable = likelyPlan.filter((values) => !(call('RUNLENGTH', ...planMatrices(values)) instanceof CellError));

describe('BESTFEED', () => {
  it('never costs more than the best of a fine scan, and lies within 0.1 g/hL of it', () => {
    fc.assert(
      fc.property(runnable, (values) => {
        const best = report('BESTFEED', values);
        const cost = costs(values);
        let scanned = { dose: 0, cost: Number.POSITIVE_INFINITY };
        for (let tenth = 500; tenth <= 2500; tenth++) {
          const here = cost(tenth / 10);
          if (here < scanned.cost) scanned = { dose: tenth / 10, cost: here };
        }
        expect(best[LEAST]).toBeLessThanOrEqual(scanned.cost * (1 + 1e-12));
        expect(cost(best[BEST] as number)).toBeCloseTo(best[LEAST] as number, 10);
        // On flat ground no one place is best.
        if (
          cost(scanned.dose - 0.2) > scanned.cost * (1 + 1e-12) &&
          cost(scanned.dose + 0.2) > scanned.cost * (1 + 1e-12)
        ) {
          expect(Math.abs((best[BEST] as number) - scanned.dose)).toBeLessThanOrEqual(0.1 + 1e-9);
        }
      }),
      cases(60),
    );
  });

  it('finds the kink where pressure and cake space end the run together, and names both', () => {
    const best = report('BESTFEED', {});
    // The kink by hand: c = H/ln(k_aid/k), at the k whose cake fills the space just as it reaches the limit.
    const flux = 250 / 50 / 36_000;
    const k = (2.8e-3 * flux * (6.5 - 0.796)) / (300 * 3.9e5);
    const hindrance = 21 * Math.log(0.1 / 0.02) + 25 * Math.log(0.1 / 1e-4);
    const solids = hindrance / Math.log((0.1 * 1e-7) / 101_325 / k);
    expect(best[BEST]).toBeCloseTo((solids - 21 - 25) / 0.995, 8);
    expect(best['Ends by']).toBe('pressure and cake space');
  });

  it('tells the feed range within 1 % of the least cost', () => {
    const best = report('BESTFEED', {});
    const cost = costs({});
    expect(cost(best[FROM] as number) / (best[LEAST] as number)).toBeCloseTo(1.01, 8);
    expect(cost(best[TO] as number) / (best[LEAST] as number)).toBeCloseTo(1.01, 8);
    expect(best[FROM]).toBeLessThan(best[BEST] as number);
    expect(best[TO]).toBeGreaterThan(best[BEST] as number);
  });

  it('sets the cost at today’s feed beside it', () => {
    expect(report('BESTFEED', {})['Cost today per hL']).toBeCloseTo(costs({})(90), 12);
    expect(report('BESTFEED', {}).Remark).toBe('Today’s feed costs 6.7 % more.');
  });

  it('says at the least feed that clarity, not cost, sets the feed', () => {
    const best = report('BESTFEED', { beerSolidsPermeability: 0.05, stabiliserDose: 0 });
    expect(best[BEST]).toBeCloseTo(50, 12);
    expect(best.Remark).toContain('clarity, not cost, sets the feed');
  });

  it('says so where cost still falls at the most feed', () => {
    const best = report('BESTFEED', { beerSolids: 200, cakeSpace: 30 }, 50, 120);
    expect(best[BEST]).toBeCloseTo(120, 10);
    expect(best.Remark).toContain('Cost still falls at the most body feed allowed, 120 g/hL.');
  });

  it('says so where nothing is to be gained', () => {
    const dose = report('BESTFEED', {})[BEST] as number;
    expect(report('BESTFEED', { bodyFeed: dose }).Remark).toBe('Nothing to gain: today’s feed costs as little.');
    const free = {
      aidPrice: 0,
      stabiliserPrice: 0,
      disposalPrice: 0,
      waterPrice: 0,
      energyPrice: 0,
      beerValue: 0,
      labourPrice: 0,
      downtimeCost: 0,
      cleaningCost: 0,
    };
    expect(report('BESTFEED', free).Remark).toContain('Nothing to gain');
  });

  it('says so where today’s feed lies outside the range and costs less', () => {
    expect(report('BESTFEED', { bodyFeed: 80 }, 100, 250).Remark).toContain('lies outside the range and costs less');
  });

  it('refuses a cake resistance, which holds for one mix alone, and a range upside down', () => {
    const fitted = {
      cakeResistance: 2e11,
      aidPermeability: undefined,
      beerSolidsPermeability: undefined,
      stabiliserPermeability: undefined,
    };
    for (const id of ['BESTFEED', 'FEEDCURVE'] as const) {
      expect(call(id, ...planMatrices(fitted))).toMatchObject({
        code: '#VALUE!',
        message: expect.stringContaining('permeabilities are needed'),
      });
      expect(call(id, ...planMatrices(), 100, 90)).toMatchObject({
        message: 'Least body feed must lie below Most body feed.',
      });
    }
    expect(call('FEEDFORRUN', ...planMatrices(fitted), 2000)).toMatchObject({ code: '#VALUE!' });
  });
});

describe('FEEDCURVE', () => {
  it('runs from the least to the most feed and agrees with RUNLENGTH and FILTRATIONCOST', () => {
    const [header, ...rows] = call('FEEDCURVE', ...planMatrices(), 60, 120, 4) as (string | number)[][];
    expect(header).toEqual(['Body feed g/hL', 'Run hL', 'Mean rise bar/h', 'Cost per hL']);
    expect(rows.map(([dose]) => Math.round(Number(dose) * 1e9) / 1e9)).toEqual([60, 80, 100, 120]);
    for (const [dose, volume, rise, cost] of rows) {
      const plan = planMatrices({ bodyFeed: Number(dose) });
      const run = Object.fromEntries(call('RUNREPORT', ...plan) as [string, number][]);
      expect(volume).toBeCloseTo(run['Run hL'] as number, 6);
      expect(rise).toBeCloseTo(run['Rise at the end bar/h'] as number, 9);
      expect(cost).toBeCloseTo(
        Object.fromEntries(call('FILTRATIONCOST', ...plan) as [string, number][]).Total as number,
        9,
      );
    }
  });

  it('refuses a number of points that is not whole', () => {
    expect(call('FEEDCURVE', ...planMatrices(), 60, 120, 4.5)).toMatchObject({
      message: 'Points must be a whole number, but 4.5 was given.',
    });
  });
});

describe('FEEDFORRUN', () => {
  it('gives the two feeds between which the run is reached, and outside of which it is not', () => {
    fc.assert(
      fc.property(runnable, fc.double({ min: 0.05, max: 0.999, noNaN: true }), (values, share) => {
        const length = (dose: number) =>
          (call('RUNLENGTH', ...planMatrices({ ...values, bodyFeed: dose })) as number[][])[0]?.[0] as number;
        const wanted = share * length(80);
        const { 'Least body feed g/hL': least = 0, 'Most body feed g/hL': most = 0 } = report(
          'FEEDFORRUN',
          values,
          wanted,
        );
        expect(least).toBeLessThanOrEqual(most);
        for (const dose of [least, (least + most) / 2, most]) expect(length(dose)).toBeGreaterThan(wanted * (1 - 1e-6));
        if (least > 0.01) expect(length(least * 0.99)).toBeLessThan(wanted);
        if (most < 9000) expect(length(most * 1.01)).toBeLessThan(wanted);
      }),
      cases(100),
    );
  });

  it('says how long the longest run is where none is long enough', () => {
    expect(call('FEEDFORRUN', ...planMatrices(), 4000)).toMatchObject({
      code: '#N/A',
      message: 'No body feed reaches 4000 hL: the longest run, 2279 hL, comes at 79.57 g/hL.',
    });
  });

  it('takes back the longest run as it was shown', () => {
    const best = report('BESTFEED', {});
    const { 'Least body feed g/hL': least, 'Most body feed g/hL': most } = report('FEEDFORRUN', {}, best['Run hL']);
    expect(least).toBeCloseTo(best[BEST] as number, 5);
    expect(most).toBeCloseTo(best[BEST] as number, 5);
  });
});
