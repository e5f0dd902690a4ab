import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CellError, call } from '../functions/answers.js';
import { likelyPlan } from './anyPlan.js';
import { byLabel, columnsOf, rowsOf, SWAP, sentenceOf } from './columns.js';

describe('BREAKEVEN', () => {
  it('is what the swap may cost, by hand from the catalogue’s totals per hL', () => {
    const [[price]] = rowsOf('BREAKEVEN', ...columnsOf({}, { ...SWAP, bodyFeed: 60 })) as [[number]];
    // 0.6112 against 0.5849 at 2.80 a kg and 0.051 kg a hL; each total is printed to half of 0.0001.
    expect(Math.abs(price - (2.8 + (0.6112 - 0.5849) / 0.051))).toBeLessThan(0.0001 / 0.051);
  });

  it('closes: at that price both plans cost the same', () => {
    let closed = 0;
    fc.assert(
      fc.property(likelyPlan, likelyPlan, (present, proposed) => {
        const answer = call('BREAKEVEN', ...columnsOf(present, proposed));
        if (answer instanceof CellError) {
          expect(answer.code).toBe('#N/A');
          expect(answer.message).toMatch(/^(No price breaks even|Present: No run|Proposed: No run): .*\.$/);
          return;
        }
        const [[stabiliserPrice]] = answer as [[number]];
        const total = byLabel(rowsOf('SAVING', ...columnsOf(present, { ...proposed, stabiliserPrice }))).get('Total');
        const [today, then] = total as [number, number];
        expect(Math.abs(today - then)).toBeLessThanOrEqual(1e-9 * today);
        closed++;
      }),
    );
    expect(closed).toBeGreaterThan(10);
  });

  it('gives no price above the most that a plan takes', () => {
    const dear = { ...SWAP, stabiliserDose: 1e-9, stabiliserPrice: 2.8, bodyFeed: 50 };
    expect(call('BREAKEVEN', ...columnsOf({}, dear))).toMatchObject({
      code: '#N/A',
      message: 'No price breaks even: it would lie above 10\u202f000\u202f000 money/kg, the most that a plan takes.',
    });
  });

  it('does not read the proposed price', () => {
    const at = (stabiliserPrice: number) => rowsOf('BREAKEVEN', ...columnsOf({}, { ...SWAP, stabiliserPrice }));
    expect(at(0)).toEqual(at(9));
  });

  it('gives no negative price: the reason stands in its place', () => {
    const dear = { ...SWAP, bodyFeed: 300 };
    expect(sentenceOf('BREAKEVEN', ...columnsOf({}, dear))).toMatch(
      /^#N\/A No price breaks even: with the stabiliser as a gift Proposed still costs [\d.]+ money\/hL, more than Present with 0\.6112 money\/hL\.$/,
    );
  });

  it('gives none where no stabiliser is dosed', () => {
    expect(sentenceOf('BREAKEVEN', ...columnsOf({}, { stabiliserDose: 0 }))).toBe(
      '#N/A No price breaks even: Stabiliser dose of Proposed is 0, so its price changes nothing.',
    );
  });
});
