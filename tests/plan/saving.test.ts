import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limited } from '../../.config/properties.js';
import { CellError, call } from '../functions/answers.js';
import { likelyPlan } from './anyPlan.js';
import { byLabel, byResistance, columnsOf, rowsOf, SWAP, sentenceOf } from './columns.js';

const near = (value: number, expected: number, scale = Math.abs(expected)) =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(1e-9 * scale + 1e-12);

/** SAVING of two plans as a map, or undefined where one of them has no run. */
function savingOf(sheet: readonly unknown[]) {
  const answer = call('SAVING', ...sheet);
  return answer instanceof CellError ? undefined : byLabel(answer as (string | number)[][]);
}

describe('SAVING of the invented plan and its swaps', () => {
  // Totals per hL as the catalogue prints them, to four decimals: present, then swapped at three body feeds.
  it.each([
    [90, 0.696, -0.0848],
    [60, 0.5849, 0.0263],
    [50, 0.5479, 0.0633],
  ])('at a body feed of %d g/hL costs %d per hL and saves %d', (bodyFeed, proposed, saved) => {
    const total = savingOf(columnsOf({}, { ...SWAP, bodyFeed }))?.get('Total') as number[];
    expect(total[0]).toBeCloseTo(0.6112, 4);
    expect(total[1]).toBeCloseTo(proposed, 4);
    expect(Math.abs((total[2] as number) - saved)).toBeLessThan(1e-4);
    expect(total[5]).toBeCloseTo(500_000 * (total[2] as number), 6);
  });

  it('shows where the money comes from and what gets dearer, item by item', () => {
    const rows = rowsOf('SAVING', ...columnsOf({}, { ...SWAP, bodyFeed: 60 }));
    expect(rows[0]).toEqual([
      'Item',
      ...['Present per hL', 'Proposed per hL', 'Saved per hL'],
      ...['Present per year', 'Proposed per year', 'Saved per year'],
    ]);
    const items = byLabel(rows);
    // By hand: body feed 0.090 kg × 0.80 and 0.060 kg × 0.80; stabiliser 0.060 kg × 2.40 and 0.051 kg × 2.80.
    for (const [item, expected] of [
      ['Body feed', [0.072, 0.048, 0.024, 36_000, 24_000, 12_000]],
      ['Stabiliser', [0.144, 0.1428, 0.0012, 72_000, 71_400, 600]],
    ] as const) {
      for (const [column, value] of expected.entries()) expect(items.get(item)?.[column]).toBeCloseTo(value, 8);
    }
    // By hand from the printed runs: 240 of downtime over 2104.0 and 2109.6 hL, 40 kg of precoat at 0.80.
    expect(items.get('Downtime')?.[0]).toBeCloseTo(240 / 2104.0, 5);
    expect(items.get('Downtime')?.[1]).toBeCloseTo(240 / 2109.6, 5);
    expect(items.get('Precoat')?.[1]).toBeCloseTo(32 / 2109.6, 6);
    // The swap at the same feed: dearer where runs are short.
    expect(savingOf(columnsOf({}, { ...SWAP, bodyFeed: 90 }))?.get('Downtime')?.[2]).toBeLessThan(0);
  });

  it('weighs the spent cake as the catalogue does: 0.618 kg of wet cake for each hL', () => {
    const rows = rowsOf('FILTRATIONCOST', ...columnsOf({}));
    const tonnes = Number(rows.find(([label]) => label === 'Spent cake t')?.[2]);
    expect((tonnes * 1000) / 500_000).toBeCloseTo(0.618, 3);
  });
});

describe('SAVING', () => {
  const pairs = fc.tuple(likelyPlan, likelyPlan);

  it('has items that add up to the total, and totals that FILTRATIONCOST gives too', () => {
    let added = 0;
    fc.assert(
      fc.property(pairs, ([present, proposed]) => {
        const items = savingOf(columnsOf(present, proposed));
        if (!items) return;
        const total = items.get('Total') as number[];
        const lines = [...items].filter(([item]) => item !== 'Total' && item !== 'Item').map(([, cells]) => cells);
        expect(lines).toHaveLength(11);
        for (const column of [0, 1, 2, 3, 4, 5]) {
          const scale = Math.max(
            Math.abs(total[column < 3 ? 0 : 3] as number),
            Math.abs(total[column < 3 ? 1 : 4] as number),
          );
          near(
            lines.reduce((sum, cells) => sum + (cells[column] as number), 0),
            total[column] as number,
            scale,
          );
        }
        for (const [column, plan] of [present, proposed].entries()) {
          const alone = byLabel(rowsOf('FILTRATIONCOST', ...columnsOf(plan))).get('Total') as number[];
          near(total[column] as number, alone[0] as number);
          near(total[column + 3] as number, alone[1] as number);
        }
        added++;
      }),
    );
    expect(added).toBeGreaterThan(limited(100) / 2);
  });

  it('changes its sign when present and proposed change places', () => {
    fc.assert(
      fc.property(pairs, ([present, proposed]) => {
        const there = savingOf(columnsOf(present, proposed));
        const back = savingOf(columnsOf(proposed, present));
        expect(back === undefined).toBe(there === undefined);
        for (const [item, cells] of there ?? []) {
          if (item === 'Item') continue;
          expect(back?.get(item)?.[2]).toBe(-(cells[2] as number) + 0);
          expect(back?.get(item)?.[5]).toBe(-(cells[5] as number) + 0);
        }
      }),
    );
  });

  it('saves nothing by changing nothing, and in proportion to the year', () => {
    fc.assert(
      fc.property(pairs, fc.double({ min: 0.1, max: 10, noNaN: true }), ([present, proposed], factor) => {
        const same = savingOf(columnsOf(present, present));
        for (const [item, cells] of same ?? []) if (item !== 'Item') expect([cells[2], cells[5]]).toEqual([0, 0]);
        const one = savingOf(columnsOf(present, proposed))?.get('Total') as number[] | undefined;
        const year = { yearVolume: 500_000 * factor };
        const longer = savingOf(columnsOf({ ...present, ...year }, { ...proposed, ...year }))?.get('Total');
        if (!one || !longer) return;
        near(longer[2] as number, one[2] as number, one[0]);
        near(longer[5] as number, factor * (one[5] as number), factor * (one[3] as number));
      }),
    );
  });

  it('refuses plans of different years, and says which plan has no run', () => {
    expect(sentenceOf('SAVING', ...columnsOf({}, { yearVolume: 400_000 }))).toBe(
      '#VALUE! Year volume must be the same in both plans, but 500\u202f000 hL and 400\u202f000 hL were given.',
    );
    expect(sentenceOf('SAVING', ...columnsOf({}, { startPressure: 5 }))).toMatch(
      /^#N\/A Proposed: No run: the pressure/,
    );
    expect(sentenceOf('SAVING', ...columnsOf({ startPressure: 5 }, {}))).toMatch(
      /^#N\/A Present: No run: the pressure/,
    );
  });
});

describe('a saving that would be invented', () => {
  const FITTED = byResistance(1.6e11);

  it.each([
    ['bodyFeed', 60, 'Body feed'],
    ['beerSolids', 30, 'Beer solids'],
    ['stabiliserDose', 40, 'Stabiliser dose'],
    ['stabiliserMoisture', 0.05, 'Stabiliser moisture'],
    ['stabiliserRemoved', 0.5, 'Stabiliser removed before filter'],
  ] as const)('is refused where %s differs at one Cake resistance', (key, value, label) => {
    for (const id of ['SAVING', 'BREAKEVEN']) {
      const said = sentenceOf(id, ...columnsOf(FITTED, { ...FITTED, [key]: value }));
      expect(said).toMatch(
        new RegExp(`^#VALUE! ${label} differs between Present and Proposed at one and the same Cake`),
      );
      expect(said).toContain('Give permeabilities in its place (FITFEED), or each plan its own Cake resistance');
    }
  });

  it('names all that differ', () => {
    expect(sentenceOf('SAVING', ...columnsOf(FITTED, { ...FITTED, ...SWAP, ...FITTED, bodyFeed: 60 }))).toContain(
      'Body feed, Stabiliser dose and Stabiliser moisture differ between',
    );
  });

  it('is answered with permeabilities, or a resistance fitted on each mix', () => {
    expect(sentenceOf('SAVING', ...columnsOf({}, { bodyFeed: 60 }))).toBe('answered');
    expect(sentenceOf('SAVING', ...columnsOf(FITTED, { ...byResistance(2.1e11), bodyFeed: 60 }))).toBe('answered');
  });

  it('is none where the mix stays as it is: prices, filter, and a stabiliser that never reaches the cake', () => {
    expect(sentenceOf('SAVING', ...columnsOf(FITTED, { ...FITTED, stabiliserPrice: 2, area: 60 }))).toBe('answered');
    const settled = { ...FITTED, stabiliserRemoved: 1 };
    expect(sentenceOf('SAVING', ...columnsOf(settled, { ...settled, stabiliserDose: 40 }))).toBe('answered');
  });
});
