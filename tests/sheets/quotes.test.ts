import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { breakEvenPrice } from '../../src/cost/breakEvenPrice.js';
import { costPerHl } from '../../src/cost/costPerHl.js';
import { landedPrice } from '../../src/cost/landedPrice.js';
import { rankQuotes } from '../../src/cost/rankQuotes.js';
import { dryPrice } from '../../src/moisture/dryPrice.js';
import { moistureCredit } from '../../src/moisture/moistureCredit.js';
import { sameSolids } from '../../src/moisture/sameSolids.js';
import { OFFERS, type Offer } from '../../src/sheets/quotes/offers.js';
import { quotes } from '../../src/sheets/quotes.js';
import { REFERENCE_MOISTURE } from '../../src/stabiliser/factors.js';
import { swapDose } from '../../src/stabiliser/swapDose.js';
import { answerOf, figureOf } from './library.js';
import { type Shown, shown } from './shown.js';

let sheet: Shown;
beforeAll(async () => {
  sheet = await shown(quotes);
});
afterAll(() => sheet.dispose());

const FIRST = quotes.rows.findIndex(([, cell], row) => row > 30 && cell?.text === OFFERS[0]?.name) + 1;
const heads = quotes.rows[FIRST - 3]?.map((cell) => cell.text) ?? [];
const columnOf = (head: string): string => String.fromCharCode(65 + heads.indexOf(head));
const shownOf = (head: string) => sheet.range(`${columnOf(head)}${FIRST}:${columnOf(head)}${FIRST + 11}`).flat();

function byLibrary(offer: Offer) {
  const { name: _, kind, moisture, ownDose, ...bought } = offer;
  const landed = figureOf(landedPrice, bought);
  const swapped = figureOf(swapDose, { dose: 60, fromKind: 'hydrogel', toKind: kind, position: 0.5 });
  const usual = REFERENCE_MOISTURE[kind as keyof typeof REFERENCE_MOISTURE];
  const dose = ownDose ?? figureOf(sameSolids, { amount: swapped, moisture: usual, newMoisture: moisture });
  return {
    'Landed price': landed,
    'Price per dry kg': figureOf(dryPrice, { price: landed, moisture }),
    'Dose at equal effect': dose,
    'Dry dose': figureOf(sameSolids, { amount: dose, moisture, newMoisture: 0 }),
    Cost: figureOf(costPerHl, { dose, price: landed }),
    'Break-even price': figureOf(breakEvenPrice, { presentCost: 0.144, otherCost: 0, dose }),
  };
}

describe('the quotes sheet', () => {
  it('shows for each offer what the library answers, and nothing where no offer stands', () => {
    const expected = OFFERS.map(byLibrary);
    for (const head of Object.keys(expected[0] ?? {}) as (keyof ReturnType<typeof byLibrary>)[]) {
      const column = shownOf(head);
      expected.forEach((one, row) => {
        expect(column[row], `${head} ${row}`).toBeCloseTo(one[head], 9);
      });
      expect(column.slice(OFFERS.length).map((cell) => cell ?? '')).toEqual(['', '', '']);
    }
  });

  it('ranks them by cost per hL, in the table and beside each offer', () => {
    const expected = OFFERS.map(byLibrary);
    const ranked = answerOf(rankQuotes, {
      names: OFFERS.map(({ name }) => name),
      prices: expected.map((one) => one['Landed price']),
      moistures: OFFERS.map(({ moisture }) => moisture),
      dryDoses: expected.map((one) => one['Dry dose']),
    });
    const table = sheet.range(quotes.names.ranked ?? '');
    expect(table[0]).toEqual(['Name', 'Cost per hL']);
    for (const [row, [rank, name, , , cost]] of ranked.slice(1).entries()) {
      expect(table[row + 1]?.[0]).toBe(name);
      expect(table[row + 1]?.[1]).toBeCloseTo(cost as number, 9);
      expect(shownOf('Rank')[OFFERS.findIndex((offer) => offer.name === name)]).toBe(rank);
    }
    const costs = ranked.slice(1).map(([, , , , cost]) => cost as number);
    expect(costs).toEqual([...costs].sort((one, other) => one - other));
  });

  it('agrees with the other sheets on the price of the present powder and of the proposed one', () => {
    expect(byLibrary(OFFERS[0] as Offer)['Landed price']).toBeCloseTo(2.4, 12);
    expect(byLibrary(OFFERS[2] as Offer)['Landed price']).toBeCloseTo(2.8, 12);
  });

  it('credits a delivery that came moister than agreed', () => {
    expect(sheet.named('foundMoisture')).toBeCloseTo(0.67, 12);
    const credit = figureOf(moistureCredit, { mass: 10_000, price: 2.4, agreedMoisture: 0.65, foundMoisture: 0.67 });
    expect(sheet.named('deliveryCredit')).toBeCloseTo(credit, 6);
    expect(sheet.named('deliveryDry')).toBeCloseTo(3300, 6);
  });
});
