import { describe, expect, it } from 'vitest';
import { call } from '../functions/answers.js';
import { planMatrices } from './sheet.js';

type Changed = NonNullable<Parameters<typeof planMatrices>[0]>;

const SWAP = { stabiliserMoisture: 0.01, stabiliserPermeability: 0.08, stabiliserDose: 51, bodyFeed: 60 };
const ends = (presentLow: Changed, presentHigh: Changed, proposedLow: Changed, proposedHigh: Changed) => {
  const columns = [presentLow, presentHigh, { ...SWAP, ...proposedLow }, { ...SWAP, ...proposedHigh }];
  return [planMatrices()[0], ...columns.map((one) => planMatrices(one)[1])];
};
const rank = (...all: Parameters<typeof ends>) => call('SAVINGSENSITIVITY', ...ends(...all)) as (string | number)[][];
const saved = (present: Changed, proposed: Changed) => {
  const [labels, values] = planMatrices(present);
  const table = call('SAVING', labels, values, planMatrices({ ...SWAP, ...proposed })[1]) as (string | number)[][];
  return table.at(-1)?.at(-1) as number;
};

describe('SAVINGSENSITIVITY', () => {
  it('moves what both plans share in both, as SAVING does at each end', () => {
    const low = { disposalPrice: 60 };
    const high = { disposalPrice: 90 };
    const [, row, middle] = rank(low, high, low, high);
    expect(row?.slice(0, 2)).toEqual(['Disposal price per t', 'both']);
    expect(row?.[2]).toBeCloseTo(saved(low, low), 6);
    expect(row?.[3]).toBeCloseTo(saved(high, high), 6);
    expect(row?.[4]).toBeCloseTo(saved(high, high) - saved(low, low), 6);
    expect(middle?.[0]).toBe('All in the middle');
    expect(middle?.[2]).toBeCloseTo(saved({ disposalPrice: 75 }, { disposalPrice: 75 }), 6);
  });

  it('moves what each plan has for itself in that plan alone, and puts the widest first', () => {
    const rows = rank({}, {}, { stabiliserDose: 40, aidPrice: 0.8 }, { stabiliserDose: 62, aidPrice: 0.8 });
    expect(rows.slice(1).map(([item, plan]) => [item, plan])).toEqual([
      ['Stabiliser dose g/hL', 'Proposed'],
      ['All in the middle', ''],
    ]);
    expect(rows[1]?.[2]).toBeCloseTo(saved({}, { stabiliserDose: 40 }), 6);
    expect(rows[1]?.[3]).toBeCloseTo(saved({}, { stabiliserDose: 62 }), 6);
  });

  it('ranks the saving and not the cost: a guess that moves both plans alike moves nothing', () => {
    const shared = [
      { otherCost: 0, beerValue: 27 },
      { otherCost: 5, beerValue: 33 },
    ] as const;
    const items = rank(shared[0], shared[1], shared[0], shared[1]).map(([item]) => item);
    expect(items).not.toContain('Other cost per hL');
    expect(items).toContain('Beer value per hL');
  });

  it('takes the geometric middle of permeabilities', () => {
    const [low, high] = [{ beerSolidsPermeability: 5e-5 }, { beerSolidsPermeability: 2e-4 }];
    const middle = rank(low, high, low, high).at(-1);
    expect(middle?.[2]).toBeCloseTo(saved({}, {}), 6);
  });

  it('refuses what SAVINGSPREAD refuses, and says where there is no run', () => {
    expect(call('SAVINGSENSITIVITY', ...ends({ aidPrice: 2 }, { aidPrice: 1 }, {}, {}))).toMatchObject({
      message: expect.stringMatching(/^Filter aid price: Present low, 2 money\/kg, lies above Present high/),
    });
    const rows = rank({}, {}, { pressureLimit: 0.5 }, { pressureLimit: 4.5 });
    expect(rows[1]).toEqual([
      'Pressure drop limit bar',
      'Proposed',
      '',
      expect.any(Number),
      '',
      'No run at its low end.',
    ]);
  });
});
