import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CellError, call } from '../functions/answers.js';
import { likelyPlan } from './anyPlan.js';
import { byLabel, byResistance, type Changed, columnsOf, rowsOf, sentenceOf } from './columns.js';

const costOf = (changed: Changed) =>
  byLabel(rowsOf('FILTRATIONCOST', ...columnsOf(changed))).get('Total')?.[0] as number;
const sensitivity = (low: Changed, high: Changed) => rowsOf('SENSITIVITY', ...columnsOf(low, high));
const IDLE = 'Labels without effect, left out';

describe('SENSITIVITY', () => {
  it('moves one label at a time, the others in the middle, widest first and signed', () => {
    const rows = sensitivity(
      { stabiliserPrice: 2, cakeSpace: 6, disposalPrice: 65 },
      { stabiliserPrice: 2.8, cakeSpace: 6.6, disposalPrice: 75 },
    );
    const middle = { stabiliserPrice: 2.4, cakeSpace: 6.3, disposalPrice: 70 };
    expect(rows.map(([label]) => label)).toEqual([
      'Label',
      'Stabiliser price per kg',
      'Cake space kg/m²',
      'Disposal price per t',
      'All in the middle',
      IDLE,
    ]);
    const found = byLabel(rows);
    // By hand: 0.060 kg a hL × 0.80 a kg.
    expect(found.get('Stabiliser price per kg')?.[2]).toBeCloseTo(0.048, 12);
    const [atLow, atHigh, change] = found.get('Cake space kg/m²') as number[];
    expect(atLow).toBeCloseTo(costOf({ ...middle, cakeSpace: 6 }), 12);
    expect(atHigh).toBeCloseTo(costOf({ ...middle, cakeSpace: 6.6 }), 12);
    expect(change).toBeLessThan(0);
    expect(change).toBeCloseTo((atHigh as number) - (atLow as number), 12);
    expect(found.get('All in the middle')?.[0]).toBeCloseTo(costOf(middle), 12);
    expect(found.get(IDLE)?.[0]).toBe(0);
  });

  it('takes permeabilities and resistances in the middle of their logarithms', () => {
    const pressed = { cakeSpace: 20 };
    const found = byLabel(sensitivity({ ...pressed, aidPermeability: 0.05 }, { ...pressed, aidPermeability: 0.2 }));
    expect(found.get('All in the middle')?.[0]).toBeCloseTo(costOf({ ...pressed, aidPermeability: 0.1 }), 12);
    const fitted = byLabel(sensitivity({ ...byResistance(1e11), ...pressed }, { ...byResistance(4e11), ...pressed }));
    expect(fitted.get('All in the middle')?.[0]).toBeCloseTo(costOf({ ...byResistance(2e11), ...pressed }), 12);
  });

  it('leaves out labels that do nothing and counts them, but not those that have one value', () => {
    const rows = sensitivity({ pressureLimit: 4.4, runLimit: 5000 }, { pressureLimit: 4.8, runLimit: 9000 });
    expect(rows.map(([label]) => label)).toEqual(['Label', 'All in the middle', IDLE]);
    expect(rows.at(-1)?.[1]).toBe(2);
  });

  it('keeps a label that costs the same at both ends and less between them', () => {
    const at = (bodyFeed: number) => costOf({ bodyFeed });
    let [less, more] = [76, 90];
    for (let step = 0; step < 100; step++) {
      const feed = (less + more) / 2;
      if (at(feed) > at(70)) more = feed;
      else less = feed;
    }
    const found = byLabel(sensitivity({ bodyFeed: 70 }, { bodyFeed: less }));
    const [atLow, , change] = found.get('Body feed g/hL') as number[];
    expect(Math.abs(change as number)).toBeLessThan(1e-12);
    expect(atLow).toBeGreaterThan((found.get('All in the middle')?.[0] as number) * 1.01);
  });

  it('puts first, with a remark and no cost, what leaves no run at one of its ends', () => {
    const rows = sensitivity({ startPressure: 0.2, stabiliserPrice: 1 }, { startPressure: 6, stabiliserPrice: 4 });
    expect(rows[1]).toEqual(['Start pressure drop bar', expect.any(Number), '', '', 'No run at its high end.']);
    expect(rows[2]?.[0]).toBe('Stabiliser price per kg');
  });

  it('has no answer where the middle has no run', () => {
    expect(sentenceOf('SENSITIVITY', ...columnsOf({ startPressure: 4 }, { startPressure: 6 }))).toMatch(
      /^#N\/A With every label in the middle of its ends: No run/,
    );
  });

  it('refuses by name what is no range', () => {
    const said = (low: Changed, high: Changed) => sentenceOf('SENSITIVITY', ...columnsOf(low, high));
    expect(said({ bodyFeed: 100 }, { bodyFeed: 90 })).toBe(
      '#VALUE! Body feed: Low, 100 g/hL, lies above High, 90 g/hL.',
    );
    expect(said({ stabiliserDose: 0, stabiliserPermeability: undefined }, {})).toBe(
      '#VALUE! Stabiliser permeability is given in High but not in Low. Give both ends of it, or neither.',
    );
    for (const [key, label] of [
      ['precoatPrice', 'Precoat price'],
      ['runLimit', 'Run limit'],
      ['septumRadius', 'Septum radius'],
    ] as const) {
      expect(said({ [key]: 0 }, { [key]: 15 })).toMatch(
        new RegExp(`^#VALUE! ${label} is 0 or blank in Low but not in`),
      );
    }
  });

  it('refuses to vary the mix at a fitted resistance, and says what to give', () => {
    const FITTED = byResistance(1.6e11);
    expect(sentenceOf('SENSITIVITY', ...columnsOf({ ...FITTED, bodyFeed: 80 }, { ...FITTED, bodyFeed: 100 }))).toBe(
      '#VALUE! Body feed is varied at one Cake resistance, which holds only for the powder mix that it was fitted on, so the answer would be invented. Give permeabilities in its place (FITFEED), or hold Body feed.',
    );
    const free = { ...byResistance(2e11), bodyFeed: 100 };
    expect(sentenceOf('SENSITIVITY', ...columnsOf({ ...FITTED, bodyFeed: 80 }, free))).toContain('Body feed is varied');
    expect(sentenceOf('SENSITIVITY', ...columnsOf(FITTED, byResistance(2e11)))).toBe('answered');
  });

  it('ranks by span for any plan, whatever its labels do', () => {
    fc.assert(
      fc.property(likelyPlan, fc.double({ min: 1.01, max: 1.6, noNaN: true }), (plan, factor) => {
        const wide = Object.fromEntries(
          (
            ['flow', 'viscosity', 'precoatLoad', 'beerSolids', 'aidPermeability', 'turnaround', 'waterPrice'] as const
          ).map((key) => [key, ((plan as Changed)[key] ?? 4) * factor]),
        );
        const low = { turnaround: 4, waterPrice: 4, ...plan };
        const answer = call('SENSITIVITY', ...columnsOf(low, { ...low, ...wide }));
        if (answer instanceof CellError) return expect(answer.code).toBe('#N/A');
        const rows = answer as (string | number)[][];
        const middle = Number(rows.at(-2)?.[1]);
        const spans = rows
          .slice(1, -2)
          .map(([, atLow, atHigh]) =>
            atLow === '' || atHigh === ''
              ? Number.POSITIVE_INFINITY
              : Math.max(Number(atLow), middle, Number(atHigh)) - Math.min(Number(atLow), middle, Number(atHigh)),
          );
        for (const [place, span] of spans.slice(1).entries()) {
          expect(span).toBeLessThanOrEqual((spans[place] as number) * (1 + 1e-6));
        }
        expect(spans.length + Number(rows.at(-1)?.[1])).toBe(7);
      }),
    );
  });
});
