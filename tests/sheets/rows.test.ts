import { afterEach, describe, expect, it } from 'vitest';
import { OFFERS } from '../../src/sheets/quotes/offers.js';
import { quotes } from '../../src/sheets/quotes.js';
import type { StarterSheet } from '../../src/sheets/sheet.js';
import { BEERS, type Beer } from '../../src/sheets/year/beers.js';
import { year } from '../../src/sheets/year.js';
import { type Handled, handled, type Row } from './handled.js';
import { PASTED, placesOf } from './rowChanges.js';
import { shortened } from './shortened.js';
import { yearByHand } from './yearByHand.js';

// Room for more than is pasted; marks by colour change no answer, and take the longest.
const roomy = (sheet: StarterSheet) => shortened({ ...sheet, conditions: [] }, 170);

let on: Handled;
afterEach(() => on.book.dispose());

const rowOf = ({ rows }: StarterSheet, label: string, after = 0) =>
  rows.findIndex(([cell], row) => row >= after && cell?.text === label) + 1;

describe('offers in the list of quotes', () => {
  const starter = roomy(quotes);
  const { cheapestQuote = '', cheapestCost = '', rankedOffers = '' } = starter.names;
  const first = rowOf(starter, 'State') + 2;
  const heads = starter.rows[first - 3]?.map(({ text }) => text) ?? [];
  const column = (head: string) => String.fromCharCode(65 + heads.indexOf(head));
  const [given, cost, rank] = [OFFERS.length, column('Cost'), column('Rank')];

  interface Known {
    readonly name: string;
    readonly cost: number;
  }
  const ofExample = (): Known[] =>
    OFFERS.map(({ name }, row) => ({ name, cost: on.shown(`${cost}${first + row}`) as number }));
  /** What the sheet must say of offers: the cheapest, its cost, and how many there are. */
  function expectRanked(offers: readonly Known[], what: string) {
    const cheapest = [...offers].sort((one, other) => one.cost - other.cost)[0] as Known;
    expect(on.shown(cheapestQuote), what).toBe(cheapest.name);
    expect(on.shown(cheapestCost), what).toBeCloseTo(cheapest.cost, 9);
    expect(on.shown(rankedOffers), what).toBe(`${offers.length} of ${offers.length}`);
  }
  /** Offers of one’s own, each with a dose from a ladder, so that its cost is price times dose. */
  const own = (count: number): { readonly row: Row; readonly known: Known }[] =>
    Array.from({ length: count }, (_, index) => {
      const [price, dose] = [905 + 7 * ((index * 37) % 151), 61 + ((index * 11) % 17)];
      const name = `Offer ${index + 1}`;
      return {
        row: [name, 'hydrogel', price, 400, 0.2, 0, 0, 0, 0.61, dose],
        known: { name, cost: (dose / 1000) * (price / 400 + 0.2) },
      };
    });

  it('are ranked after a row is taken out at any place, the first among them, and put in again', async () => {
    on = await handled(starter);
    const all = ofExample();
    for (const place of placesOf(given)) {
      const at = first + place;
      const kept = 'BCDEFGHIJK'.split('').map((letter) => on.shown(`${letter}${at}`) ?? '') as Row;
      await on.takeOut(at);
      expectRanked(
        all.filter((_, row) => row !== place),
        `without ${place}`,
      );
      await on.putIn(at);
      expectRanked(
        all.filter((_, row) => row !== place),
        `with a blank row at ${place}`,
      );
      await on.paste(`B${at}`, [kept]);
      expectRanked(all, `with ${place} again`);
    }
  }, 120_000);

  it.each(PASTED)(
    'are ranked where %i are pasted over the example’s, and below them',
    async (count) => {
      on = await handled(starter);
      const all = ofExample();
      const pasted = own(count);
      await on.paste(
        `B${first}`,
        pasted.map(({ row }) => row),
      );
      const known = pasted.map((one) => one.known);
      expectRanked([...known, ...all.slice(count)], 'over the example');
      if (count > 20) return;
      await on.paste(
        `B${first + Math.max(count, given)}`,
        own(count).map(({ row }) => [`Later ${row[0]}`, ...row.slice(1)]),
      );
      const later = known.map(({ name, cost: of }) => ({ name: `Later ${name}`, cost: of }));
      expectRanked([...known, ...all.slice(count), ...later], 'below them, too');
    },
    120_000,
  );

  it('of one name are both ranked, each by its own cost, and named', async () => {
    on = await handled(starter);
    const all = ofExample();
    const name = OFFERS[0]?.name ?? '';
    const { row, known } = own(1)[0] as ReturnType<typeof own>[number];
    await on.paste(`B${first + given}`, [[name, ...row.slice(1)]]);
    expectRanked([...all, { name, cost: known.cost }], 'two of one name');
    expect(on.shown(`A${first + given}`)).toBe(
      `unusual: B${first + given} stands further up as well: both are ranked.`,
    );
    const costs = [...all.map((one) => one.cost), known.cost].sort((one, other) => one - other);
    expect(on.shown(`${rank}${first + given}`)).toBe(costs.indexOf(known.cost) + 1);
    expect(on.shown(`${rank}${first}`)).toBe(costs.indexOf(all[0]?.cost as number) + 1);
  });

  it('are ranked the same after rows are put in above the list', async () => {
    on = await handled(starter);
    const before = [on.shown(cheapestQuote), on.shown(cheapestCost), on.shown(rankedOffers)];
    await on.putIn(first - 3, 2);
    expect([on.shown(cheapestQuote), on.shown(cheapestCost), on.shown(rankedOffers)]).toEqual(before);
  });
});

describe('beers in the list of the year', () => {
  const starter = roomy(year);
  const { yearTotal = '', yearTotalProposed = '', yearSaved = '', chosenBeer = '', beersInSums = '' } = starter.names;
  const first = rowOf(starter, 'The beers') + 4;
  const sum = (beers: readonly Beer[], side: 0 | 1) =>
    beers.reduce((total, beer) => total + yearByHand(beer, side).total, 0);

  const rowOfBeer = (beer: Beer, name: string): Row => [
    name,
    ...[beer.yearVolume, beer.viscosity, beer.beerSolids],
    ...[beer.bodyFeed[0], beer.stabiliserDose[0], beer.bodyFeed[1], beer.stabiliserDose[1]],
  ];
  /** Beers of one’s own, none like another or like the example’s. */
  const own = (count: number): Beer[] =>
    Array.from({ length: count }, (_, index) => ({
      yearVolume: 5200 + 310 * index,
      viscosity: 2.35 + 0.05 * (index % 13),
      beerSolids: 19 + (index % 17),
      bodyFeed: [82 + (index % 23), 58 + (index % 19)],
      stabiliserDose: [48 + (index % 15), 41 + (index % 11)],
    }));
  function expectSums(beers: readonly Beer[], what: string) {
    const [now, proposed] = [sum(beers, 0), sum(beers, 1)];
    expect((on.shown(yearTotal) as number) / now, what).toBeCloseTo(1, 9);
    expect((on.shown(yearTotalProposed) as number) / proposed, what).toBeCloseTo(1, 9);
    expect(on.shown(yearSaved), what).toBeCloseTo(now - proposed, 3);
    expect(on.shown(beersInSums), what).toBe(`${beers.length} of ${beers.length}`);
  }

  it('add up after a row is taken out at any place, the first among them, and put in again', async () => {
    on = await handled(starter);
    for (const place of placesOf(BEERS.length)) {
      const at = first + place;
      const left = BEERS.filter((_, row) => row !== place);
      await on.takeOut(at);
      expectSums(left, `without ${place}`);
      await on.putIn(at);
      expectSums(left, `with a blank row at ${place}`);
      await on.paste(`B${at}`, [rowOfBeer(BEERS[place] as Beer, `Beer ${place + 1}`)]);
      expectSums(BEERS, `with ${place} again`);
    }
  }, 240_000);

  it.each(PASTED)(
    'add up where %i are pasted over the example’s',
    async (count) => {
      on = await handled(starter);
      const beers = own(count);
      await on.paste(
        `B${first}`,
        beers.map((beer, index) => rowOfBeer(beer, `House beer ${index + 1}`)),
      );
      expectSums([...beers, ...BEERS.slice(count)], `${count} over the example`);
      // The one beer that is looked at alone is named, and is no longer there.
      expect(on.shown(starter.names.yearChance ?? '')).toBe(`see ${chosenBeer}`);
    },
    120_000,
  );

  it('of one name are both in the sums, and named', async () => {
    on = await handled(starter);
    const [beer] = own(1) as [Beer];
    await on.paste(`B${first + BEERS.length}`, [rowOfBeer(beer, 'Beer 2')]);
    expectSums([...BEERS, beer], 'two of one name');
    expect(on.shown(`A${first + BEERS.length}`)).toBe(
      `unusual: B${first + BEERS.length} stands further up as well: both are in the sums.`,
    );
    await on.book.enter(chosenBeer, 'Beer 2');
    expect(on.shown(starter.names.yearChance ?? '')).toBe(`see ${chosenBeer}`);
  });

  it('add up to the same after rows are put in above the list', async () => {
    on = await handled(starter);
    await on.putIn(first - 3, 2);
    expectSums(BEERS, 'two rows above');
  });
});
