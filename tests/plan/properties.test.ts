import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../.config/properties.js';
import { catalogue } from '../../src/catalogue.js';
import { isNoAnswer } from '../../src/core/evaluate.js';
import { COST_ITEMS, costOf, itemCost, spentCake } from '../../src/plan/cost.js';
import { powderPerRun } from '../../src/plan/powder.js';
import { loadAfter, pressureAfter, runOf } from '../../src/plan/run.js';
import { CellError, call } from '../functions/answers.js';
import { expectFiniteOrSentences } from '../functions/finite.js';
import { likelyPlan, planWithinLimits } from './anyPlan.js';
import { runPlan } from './runPlan.js';
import { planMatrices } from './sheet.js';

const OVER_PLAN = [
  'RUNLENGTH',
  'RUNREPORT',
  'RUNCURVE',
  'FILTRATIONCOST',
  'BESTFEED',
  'FEEDCURVE',
  'FEEDFORRUN',
  'PLANCHECK',
];
const near = (value: number, expected: number, relative = 1e-9) =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(relative * Math.max(Math.abs(expected), 1e-12));

/** The plan's run, or undefined where there is none. */
function run(changed: Parameters<typeof runPlan>[0]) {
  const found = runOf(runPlan(changed));
  return isNoAnswer(found) ? undefined : found;
}

describe('every function over a plan', () => {
  it('is tested here', () => {
    const over = catalogue.filter(({ inputs }) => Object.values(inputs).some(({ kind }) => kind === 'plan'));
    expect(over.map(({ id }) => id)).toEqual(expect.arrayContaining(OVER_PLAN));
  });

  it.each(OVER_PLAN)('%s gives finite numbers or a sentence for every plan within the limits', (id) => {
    fc.assert(
      fc.property(planWithinLimits, (values) => {
        const answer = call(id, ...planMatrices(values), ...(id === 'FEEDFORRUN' ? [1000] : []));
        expectFiniteOrSentences(answer);
      }),
      cases(300),
    );
  });
});

describe('a run', () => {
  it('never gets longer by more beer solids at one cake resistance', () => {
    fc.assert(
      fc.property(likelyPlan, fc.double({ min: 1, max: 5, noNaN: true }), (values, factor) => {
        const fixed = {
          ...values,
          cakeResistance: 2e11,
          aidPermeability: undefined,
          beerSolidsPermeability: undefined,
          stabiliserPermeability: undefined,
        };
        const one = run(fixed);
        const more = run({ ...fixed, beerSolids: (values.beerSolids ?? 1) * factor });
        if (one && more) expect(more.volume).toBeLessThanOrEqual(one.volume * (1 + 1e-12));
      }),
    );
  });

  it('lasts the same hours on twice the area at twice the flow', () => {
    fc.assert(
      fc.property(likelyPlan, (values) => {
        const one = run({ ...values, runLimit: 0 });
        const twice = run({ ...values, runLimit: 0, area: 2 * (values.area ?? 1), flow: 2 * (values.flow ?? 1) });
        if (one && twice) near(twice.volume / twice.plan.flow, one.volume / one.plan.flow);
      }),
    );
  });

  it('ends at its first limit and within the others', () => {
    fc.assert(
      fc.property(likelyPlan, (values) => {
        const one = run(values);
        if (!one) return;
        const { plan, volume } = one;
        const reached = [
          pressureAfter(one, volume) / plan.pressureLimit,
          loadAfter(one, volume) / plan.cakeSpace,
          plan.runLimit === 0 ? 0 : volume / plan.runLimit,
        ];
        near(Math.max(...reached), 1);
      }),
    );
  });

  it('on a candle of great radius is that on a flat septum', () => {
    fc.assert(
      fc.property(likelyPlan, (values) => {
        const flat = run({ ...values, septumRadius: 0 });
        const round = run({ ...values, septumRadius: 10_000 });
        if (flat && round) near(round.volume, flat.volume, 0.01);
      }),
    );
  });
});

describe('the cost of filtration', () => {
  it('has items that add up to the total, and a year that is the year’s volume times a hL', () => {
    fc.assert(
      fc.property(likelyPlan, (values) => {
        const answer = call('FILTRATIONCOST', ...planMatrices(values));
        if (answer instanceof CellError) return;
        const rows = answer as (string | number)[][];
        const total = rows.findIndex(([item]) => item === 'Total');
        expect(total).toBe(COST_ITEMS.length + 1);
        const items = rows.slice(1, total);
        near(
          items.reduce((sum, [, perHl]) => sum + Number(perHl), 0),
          Number(rows[total]?.[1]),
        );
        near(
          items.reduce((sum, row) => sum + Number(row[2]), 0),
          Number(rows[total]?.[2]),
        );
        for (const [, perHl, perYear] of rows.slice(1, total + 1)) near(Number(perYear), Number(perHl) * 500_000);
      }),
    );
  });

  it('takes as much dry matter in as the spent cake carries out', () => {
    fc.assert(
      fc.property(likelyPlan, (values) => {
        const plan = runPlan({ ...values, stabiliserRemoved: 0 });
        const found = runOf(plan);
        if (isNoAnswer(found)) return;
        const stabiliser = plan.stabiliserDose * found.volume;
        const aid = powderPerRun(found) - stabiliser;
        const dryIn =
          aid * (1 - plan.aidMoisture) + stabiliser * (1 - plan.stabiliserMoisture) + plan.beerSolids * found.volume;
        near(spentCake(plan, found) * plan.dryMatter, dryIn);
        near(loadAfter(found, found.volume) * plan.area, dryIn);
      }),
    );
  });

  it('pays for the stabiliser’s full dose though part of it leaves before the filter', () => {
    const stabiliser = COST_ITEMS.find(({ label }) => label === 'Stabiliser');
    const cost = (removed: number) => {
      const plan = runPlan({ stabiliserRemoved: removed });
      const found = runOf(plan);
      if (isNoAnswer(found) || !stabiliser) throw new Error('No run.');
      return { item: itemCost(stabiliser, plan, found), all: costOf(plan, found) };
    };
    expect(cost(1).item).toBe(cost(0).item);
    expect(cost(1).item).toBeCloseTo(10 * 0.144, 12);
    expect(cost(1).all).toBeLessThan(cost(0).all);
  });

  it('takes the filter aid’s price for the precoat where its own is 0 or left out', () => {
    const cost = (price: number | undefined) => call('FILTRATIONCOST', ...planMatrices({ precoatPrice: price }));
    expect(cost(0)).toEqual(cost(undefined));
    expect(cost(0.8)).toEqual(cost(undefined));
    expect(cost(1.6)).not.toEqual(cost(undefined));
  });
});
