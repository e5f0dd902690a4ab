import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases, limited } from '../../.config/properties.js';
import { isNoAnswer } from '../../src/core/evaluate.js';
import { COST_ITEMS, costOf, costPerRun, itemCost } from '../../src/plan/cost.js';
import { runOf } from '../../src/plan/run.js';
import { type CellError, call } from '../functions/answers.js';
import { expectFiniteOrSentences } from '../functions/finite.js';
import { likelyPlan, planWithinLimits } from './anyPlan.js';
import { type Changed, columnsOf } from './columns.js';
import { runPlan } from './runPlan.js';

/** The plan of the lesser, or of the greater, of two values at each label. */
const end = (choose: (...values: number[]) => number, one: Changed, other: Changed): Changed =>
  Object.fromEntries(
    (Object.keys(one) as (keyof Changed)[]).map((key) => {
      const [a, b] = [one[key], other[key]];
      return [key, a === undefined || b === undefined ? (a ?? b) : choose(a, b)];
    }),
  );

/** What each comparison is handed of two plans; the ranges of a spread lie between them. */
const ARGUMENTS: Readonly<Record<string, (one: Changed, other: Changed) => unknown[]>> = {
  BREAKEVEN: (one, other) => columnsOf(one, other),
  SAVING: (one, other) => columnsOf(one, { ...other, yearVolume: one.yearVolume }),
  SENSITIVITY: (one, other) => columnsOf(end(Math.min, one, other), end(Math.max, one, other)),
  SAVINGSPREAD: (one, other) => [
    ...columnsOf(
      one,
      one,
      { ...end(Math.min, one, other), yearVolume: one.yearVolume },
      {
        ...end(Math.max, one, other),
        yearVolume: one.yearVolume,
      },
    ),
    100,
  ],
};

describe('every comparison of plans', () => {
  it.each(Object.keys(ARGUMENTS))('%s gives finite numbers or a sentence for every plan within the limits', (id) => {
    let answered = 0;
    fc.assert(
      fc.property(planWithinLimits, planWithinLimits, (one, other) => {
        const answer = call(id, ...(ARGUMENTS[id]?.(one as Changed, other as Changed) ?? []));
        // BREAKEVEN has a price for many of these plans that no plan takes.
        if (Array.isArray(answer) || (answer as CellError).message.includes('the most that a plan takes')) answered++;
        expectFiniteOrSentences(answer);
      }),
      cases(400),
    );
    expect(answered).toBeGreaterThanOrEqual(limited(400) / 100);
  });
});

describe('the cost of all items', () => {
  it('is the sum over the list of items, per run and in all', () => {
    let summed = 0;
    fc.assert(
      fc.property(likelyPlan, fc.double({ min: 0.1, max: 9, noNaN: true }), (values, otherCost) => {
        const plan = runPlan({ ...values, otherCost });
        const run = runOf(plan);
        if (isNoAnswer(run)) return;
        const items = COST_ITEMS.reduce((sum, item) => sum + itemCost(item, plan, run), 0);
        const perRun = COST_ITEMS.reduce((sum, item) => sum + (item.perRun?.(plan, run.solids) ?? 0), 0);
        expect(Math.abs(costOf(plan, run) / items - 1)).toBeLessThan(1e-12);
        expect(Math.abs(costPerRun(plan) / perRun - 1)).toBeLessThan(1e-12);
        summed++;
      }),
    );
    expect(summed).toBeGreaterThan(limited(100) / 2);
  });
});
