import { describe, expect, it } from 'vitest';
import { byLabel, byResistance, type Changed, columnsOf, rowsOf, SWAP, sentenceOf } from './columns.js';
import { spread } from './spread.js';

const PROPOSED = { ...SWAP, bodyFeed: 60 };

const said = (...plans: readonly Changed[]) => sentenceOf('SAVINGSPREAD', ...columnsOf(...plans));

describe('SAVINGSPREAD', () => {
  it('follows the triangular distribution where one price is all that is unsure', () => {
    // A saving falls by 0.051 kg × 500 000 hL = 25 500 for each unit of price: exact quantiles by hand.
    const low = { ...PROPOSED, stabiliserPrice: 2.8 };
    const high = { ...PROPOSED, stabiliserPrice: 3.8 };
    const best = byLabel(rowsOf('SAVING', ...columnsOf({}, low))).get('Total')?.[5] as number;
    const found = spread([{}, {}, low, high], 100_000, 2);
    const at = (t: number) => best - 25_500 * t;
    const tail = Math.sqrt(0.1 / 2);
    for (const [value, exact, density, share] of [
      [found.p10, at(1 - tail), 4 * tail, 0.1],
      [found.p50, at(0.5), 2, 0.5],
      [found.p90, at(tail), 4 * tail, 0.9],
    ] as const) {
      const error = (25_500 * Math.sqrt((share * (1 - share)) / 100_000)) / density;
      expect(Math.abs(value - exact)).toBeLessThan(4 * error);
    }
    expect(Math.abs(found.mean - at(0.5))).toBeLessThan((4 * 25_500) / Math.sqrt(24 * 100_000));
    const place = best / 25_500;
    const chance = place < 0.5 ? 2 * place ** 2 : 1 - 2 * (1 - place) ** 2;
    expect(Math.abs(found.chance - chance)).toBeLessThan(4 * found.error);
    expect(found.error).toBeCloseTo(Math.sqrt((found.chance * (1 - found.chance)) / 100_000), 12);
  });

  it('draws permeability and resistance on a log scale', () => {
    const pressed = { cakeSpace: 50, ...byResistance(1e11) };
    const plans = [
      { ...pressed, cakeResistance: 1e11 },
      { ...pressed, cakeResistance: 9e11 },
    ] as const;
    const proposed = { ...pressed, cakeResistance: 3e11 };
    // At the middle of the logarithms both plans are the same, so half of the samples lie below 0 and half above.
    const found = spread([...plans, proposed, proposed], 20_000);
    expect(Math.abs(found.chance - 0.5)).toBeLessThan(4 * found.error);
  });

  it('shares one draw of a label with the same ends in both plans', () => {
    const [low, high] = [
      { beerSolids: 15, waterPrice: 1 },
      { beerSolids: 40, waterPrice: 9 },
    ];
    expect(spread([low, high, low, high])).toEqual({
      ...{ p10: 0, p50: 0, p90: 0, mean: 0, chance: 0, error: 0, withoutRun: 0 },
    });
  });

  it('shares it by what the line is, not by its digits: 30 and 30.0001 are one thing', () => {
    const [low, high] = [{ beerSolids: 20 }, { beerSolids: 30 }];
    const same = spread([low, high, { ...PROPOSED, ...low }, { ...PROPOSED, ...high }]);
    const near = spread([low, high, { ...PROPOSED, ...low }, { ...PROPOSED, beerSolids: 30.0001 }]);
    for (const key of ['p10', 'p50', 'p90', 'mean'] as const) expect(Math.abs(near[key] - same[key])).toBeLessThan(1);
    expect(near.chance).toBeCloseTo(same.chance, 2);
  });

  it('draws a label for each plan where the user says that it is not the same thing', () => {
    const [low, high] = [
      { beerSolids: 15, waterPrice: 1 },
      { beerSolids: 40, waterPrice: 9 },
    ];
    const apart = spread([low, high, low, high], 1000, 1, ['Water price per m³']);
    expect(apart.p90 - apart.p10).toBeGreaterThan(1000);
    const sheet = columnsOf(low, high, low, high);
    expect(sentenceOf('SAVINGSPREAD', ...sheet, null, null, [['Water prise']])).toContain('"Water prise" is no label');
    expect(sentenceOf('SAVINGSPREAD', ...sheet, null, null, [['Year volume']])).toContain('is the same in both plans');
  });

  it('counts no tie as a saving', () => {
    const tie = spread([{}, {}, { runWater: 300, waterPrice: 1.75 }, { runWater: 300, waterPrice: 1.75 }]);
    expect(tie.chance).toBe(0);
  });

  it('collapses to SAVING where nothing is unsure', () => {
    const total = byLabel(rowsOf('SAVING', ...columnsOf({}, PROPOSED))).get('Total')?.[5] as number;
    const found = spread([{}, {}, PROPOSED, PROPOSED], 100);
    for (const value of [found.p10, found.p50, found.p90, found.mean]) expect(value).toBeCloseTo(total, 6);
    expect(found.chance).toBe(1);
  });

  it('gives the same answer to the same seed, whatever the order of the labels, and another to another', () => {
    const plans = [{ beerSolids: 20 }, { beerSolids: 30 }, { ...PROPOSED, bodyFeed: 50 }, PROPOSED] as const;
    const sheet = columnsOf(...plans);
    const turned = sheet.map((column) => [...column].reverse());
    const again = rowsOf('SAVINGSPREAD', ...sheet, 1000, 42);
    expect(rowsOf('SAVINGSPREAD', ...sheet, 1000, 42)).toEqual(again);
    expect(rowsOf('SAVINGSPREAD', ...turned, 1000, 42)).toEqual(again);
    expect(rowsOf('SAVINGSPREAD', ...sheet, 1000, 43)).not.toEqual(again);
  });

  it('gives on every machine the answer that it gave on the first', () => {
    const plans = [
      { beerSolids: 20 },
      { beerSolids: 30 },
      { ...PROPOSED, bodyFeed: 60 },
      { ...PROPOSED, bodyFeed: 90 },
    ] as const;
    const found = spread(plans, 1000, 42);
    expect(found.chance).toBe(PINNED.chance);
    for (const key of ['p10', 'p50', 'p90', 'mean'] as const) expect(found[key]).toBeCloseTo(PINNED[key], 6);
  });

  it('counts the samples without a run, and says so where none has one', () => {
    const found = spread([{ startPressure: 4 }, { startPressure: 5 }, {}, {}]);
    // Half of a symmetric range lies above the limit of 4.5 bar.
    expect(Math.abs(found.withoutRun - 5000)).toBeLessThan(4 * Math.sqrt(10_000 / 4));
    expect(said({ startPressure: 4.6 }, { startPressure: 5 }, {}, {})).toMatch(
      /^#N\/A None of the 10\u202f000 samples has a run/,
    );
  });

  it('refuses by name what is no range, no year and no number of samples', () => {
    expect(said({ stabiliserPrice: 3 }, {}, {}, {})).toBe(
      '#VALUE! Stabiliser price: Present low, 3 money/kg, lies above Present high, 2.4 money/kg.',
    );
    expect(said({}, {}, { bodyFeed: 60 }, { bodyFeed: 50 })).toContain('Body feed: Proposed low, 60 g/hL, lies above');
    expect(said({}, { yearVolume: 600_000 }, {}, {})).toContain('Year volume must be the same in both plans');
    expect(sentenceOf('SAVINGSPREAD', ...columnsOf({}, {}, {}, {}), 100.5)).toBe(
      '#VALUE! Samples must be a whole number, but 100.5 was given.',
    );
    expect(sentenceOf('SAVINGSPREAD', ...columnsOf({}, {}, {}, {}), 1_000_001)).toContain(
      'Samples must be from 100 to',
    );
    expect(sentenceOf('SAVINGSPREAD', ...columnsOf({}, {}, {}, {}), null, 1.5)).toContain(
      'Seed must be a whole number',
    );
  });

  it('refuses to vary or compare the mix at one fitted resistance', () => {
    const FITTED = byResistance(1.6e11);
    expect(said({ ...FITTED, bodyFeed: 80 }, FITTED, FITTED, FITTED)).toContain(
      'Body feed is varied in Present at one Cake resistance',
    );
    expect(said(FITTED, FITTED, FITTED, { ...FITTED, beerSolids: 30 })).toContain(
      'Beer solids is varied in Proposed at one Cake resistance',
    );
    const unsure = byResistance(2e11);
    const cut = { bodyFeed: 60 };
    expect(said(FITTED, unsure, { ...FITTED, ...cut }, { ...unsure, ...cut })).toContain(
      'Body feed differs between Present and Proposed at one and the same Cake resistance',
    );
    const own = { ...byResistance(2.2e11), ...cut };
    expect(said(FITTED, unsure, { ...FITTED, ...cut }, own)).toBe('answered');
  });
});

/** Recorded once: what seed 42 gives. */
const PINNED = {
  p10: -30275.1938072213,
  p50: -14973.5296426863,
  p90: 1129.32556441529,
  mean: -14802.9668137947,
  chance: 0.117,
};
