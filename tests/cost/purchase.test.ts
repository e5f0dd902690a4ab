import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { call, cell, sentence } from '../checks/worksheet.js';

describe('LANDEDPRICE', () => {
  it('is the price per kg alone where nothing comes on top', () => {
    expect(cell('LANDEDPRICE', 1250, 500)).toBe(2.5);
  });

  it('puts duty on the discounted goods and not on the freight', () => {
    // By hand: 1000 less 10 % is 900, with 5 % duty 945, over 500 kg 1.89; with freight 2.00; a fifth lost: 2.50.
    expect(cell('LANDEDPRICE', 1000, 500, 0.11, 0.1, 0.05, 0.2)).toBeCloseTo(2.5, 12);
    const rise = (duty: number) => (cell('LANDEDPRICE', 1000, 500, 3, 0, duty) as number) - 5;
    expect(rise(0.1)).toBeCloseTo(0.2, 12);
  });

  it('refuses a percentage written as a whole number', () => {
    expect(sentence('LANDEDPRICE', 1000, 500, 0, 10)).toContain('For 10 percent write 10 % or 0.1.');
    expect(sentence('LANDEDPRICE', 1000, 500, 0, 0, 5)).toContain('For 5 percent write 5 % or 0.05.');
  });

  it('lets the freight bear duty, too, where customs take the value with it', () => {
    // (2 + 0.5) × 1.1 a kg, not 2 × 1.1 + 0.5
    expect(cell('LANDEDPRICE', 1000, 500, 0.5, 0, 0.1, 0, 'goods and freight')).toBeCloseTo(2.75, 12);
    expect(cell('LANDEDPRICE', 1000, 500, 0.5, 0, 0.1)).toBeCloseTo(2.7, 12);
    expect(sentence('LANDEDPRICE', 1000, 500, 0.5, 0, 0.1, 0, 'all')).toContain('goods or goods and freight');
  });
});

describe('RANKQUOTES', () => {
  const rank = (...args: Parameters<typeof call> extends [string, ...infer A] ? A : never) =>
    call('RANKQUOTES', ...args) as (string | number)[][];

  it('puts first a quote that is dearer as it stands and cheaper dry', () => {
    // By hand: 2.10 at 65 % is 6.00 per dry kg, 5.60 at 5 % is 5.895; 21 g of dry powder a hL.
    const rows = rank(['wet', 'dry'], [2.1, 5.6], [0.65, 0.05], 21);
    expect(rows[0]).toEqual(['Rank', 'Name', 'Price per kg', 'Dry price per kg', 'Cost per hL']);
    expect(rows[1]?.slice(0, 3)).toEqual([1, 'dry', 5.6]);
    expect(rows[1]?.[3]).toBeCloseTo(5.6 / 0.95, 12);
    expect(rows[2]?.slice(0, 3)).toEqual([2, 'wet', 2.1]);
    expect(rows[2]?.[4]).toBeCloseTo(0.126, 12);
  });

  it('lets a dose for each offer turn the order', () => {
    const rows = rank(['wet', 'dry'], [2.1, 5.6], [0.65, 0.05], [21, 30]);
    expect(rows.slice(1).map(([, name]) => name)).toEqual(['wet', 'dry']);
  });

  it('lets ties share a rank, keep their order and skip the ranks that they share', () => {
    const rows = rank(['a', 'b', 'c', 'd'], [3, 2.1, 9, 6], [0.5, 0.65, 0.1, 0], 21);
    expect(rows.slice(1).map(([place, name]) => [place, name])).toEqual([
      [1, 'a'],
      [1, 'b'],
      [1, 'd'],
      [4, 'c'],
    ]);
  });

  it('leaves a missing name empty, wherever it is missing', () => {
    const rows = rank(['a', null, 0], [3, 2, 1], [0, 0, 0], 10);
    expect(rows.slice(1).map(([, name]) => name)).toEqual(['', '', 'a']);
  });

  it('passes over room to grow below the last quote', () => {
    expect(rank(['a', 'b', null], [3, 2, null], [0, 0, null], 10)).toHaveLength(3);
    expect(rank(['a', 'b', 0], [3, 2, 0], [0, 0, 0], 10)).toHaveLength(3);
  });

  it('refuses text and zero prices by row', () => {
    const said = (price: string | number | null) =>
      sentence('RANKQUOTES', ['a', 'b', 'c'], [2, price, 3], [0.6, 0.6, 0.6], 21);
    expect(said('2.40')).toMatch(/^#VALUE! Prices, row 2, is text, not a number: "2.40"/);
    expect(said(0)).toMatch(/^#VALUE! Prices, row 2, must be .* but the cell is blank or 0\.$/);
    expect(said(null)).toMatch(/^#VALUE! Prices, row 2, is blank/);
    expect(said(-1)).toMatch(/^#VALUE! Prices, row 2, must be/);
    expect(sentence('RANKQUOTES', ['a'], [2], [65], 21)).toContain('Moistures, row 1, must be');
    expect(sentence('RANKQUOTES', ['a', 'b'], [2, 3], [0.6, 0.6], [21, 0])).toContain('Dry doses, row 2, must be');
    expect(sentence('RANKQUOTES', ['a', 'b', 'c'], [2, 3, 4], [0.6, 0.6], 21)).toContain('must be equally long');
  });

  it('passes over rows that are blank throughout, wherever they stand, and counts rows as the sheet does', () => {
    const rows = rank(['a', '', 'c', null], [2, '', 1, null], [0.6, 0, 0.1, null], [20, null, 30, 0]);
    expect(rows.slice(1).map(([place, name]) => [place, name])).toEqual([
      [1, 'c'],
      [2, 'a'],
    ]);
    const all = rank(['a', null, 'c'], [2, 0, 1], [0.6, 0, 0.1], 21);
    expect(all.slice(1).map(([, name]) => name)).toEqual(['c', 'a']);
    const said = (price: number) => sentence('RANKQUOTES', ['a', '', 'c'], [2, '', price], [0.6, '', 0.6], 21);
    expect(said(-1)).toMatch(/^#VALUE! Prices, row 3, must be/);
    expect(sentence('RANKQUOTES', ['a', 'b', 'c'], [2, '', 3], [0.6, '', 0.6], 21)).toMatch(
      /^#VALUE! Prices, row 2, is blank/,
    );
  });

  it('loses no quote and never puts a dearer one before a cheaper one', () => {
    const quote = fc.record({
      price: fc.integer({ min: 1, max: 40 }).map((tenths) => tenths / 10),
      moisture: fc.constantFrom(0, 0.05, 0.5, 0.6, 0.65),
    });
    fc.assert(
      fc.property(fc.array(quote, { minLength: 1, maxLength: 12 }), (quotes) => {
        const rows = rank(
          quotes.map((_, row) => `quote ${row}`),
          quotes.map(({ price }) => price),
          quotes.map(({ moisture }) => moisture),
          20,
        ).slice(1);
        expect(new Set(rows.map(([, name]) => name)).size).toBe(quotes.length);
        for (const [place, row] of rows.entries()) {
          const cheaper = rows.filter((other) => Number(other[4]) < Number(row[4]) * (1 - 1e-9)).length;
          expect(row[0]).toBe(cheaper + 1);
          if (place > 0) expect(Number(row[4])).toBeGreaterThanOrEqual(Number(rows[place - 1]?.[4]) * (1 - 1e-9));
        }
      }),
    );
  });
});

describe('BREAKEVENPRICE', () => {
  it('closes with COSTPERHL', () => {
    const price = cell('BREAKEVENPRICE', 0.32, 0.11, 47) as number;
    expect((cell('COSTPERHL', 47, price) as number) + 0.11).toBeCloseTo(0.32, 12);
  });

  it('allows a gift, and gives no negative price', () => {
    expect(cell('BREAKEVENPRICE', 0.1, 0.1, 50)).toBe(0);
    expect(sentence('BREAKEVENPRICE', 0.1, 0.2, 50)).toMatch(/^#N\/A No price breaks even: without the powder/);
  });

  it('refuses a dose of nothing', () => {
    expect(sentence('BREAKEVENPRICE', 0.2, 0.1, 0)).toMatch(/^#VALUE! Dose must be/);
  });
});

describe('MOISTURECREDIT', () => {
  it('makes no claim while mass, price or one of the moistures is blank, in whatever way a host hands a blank over', () => {
    const given = [10_000, 2.4, 0.65, 0.67];
    expect(cell('MOISTURECREDIT', ...given)).toBeCloseTo((10_000 * 2.4 * 0.02) / 0.35, 9);
    for (const place of given.keys()) {
      for (const blank of [0, null, '']) {
        const without = given.map((one, index) => (index === place ? blank : one));
        expect(sentence('MOISTURECREDIT', ...(without as number[]))).toMatch(
          /but the cell is blank or 0|but nothing was given/,
        );
      }
    }
  });

  it('adds freight and duty to prices that are without them, one for all or one each', () => {
    const offers = ['RANKQUOTES', ['near', 'far'], [2, 1.9], [0, 0], 50] as const;
    const landed = (...more: unknown[]) =>
      Object.fromEntries(
        (call(...offers, ...(more as never[])) as unknown[][]).slice(1).map(([, name, price]) => [name, price]),
      );
    expect(landed()).toEqual({ near: 2, far: 1.9 });
    expect(landed([0.1, 0.4], 0.1)).toEqual({ near: 2.3, far: 2.49 });
    expect(landed([0.1, 0.4], [0, 0.1], 'goods and freight')).toEqual({ near: 2.1, far: 2.53 });
  });
});
