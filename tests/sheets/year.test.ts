import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { breakEven } from '../../src/plan/breakEven.js';
import { saving } from '../../src/plan/saving.js';
import { savingSpread } from '../../src/plan/savingSpread.js';
import { sensitivity } from '../../src/plan/sensitivity.js';
import { BEERS } from '../../src/sheets/year/beers.js';
import { year } from '../../src/sheets/year.js';
import { answerOf, figureOf, planOf, reportOf } from './library.js';
import { type Shown, shown } from './shown.js';
import { yearByHand } from './yearByHand.js';

let sheet: Shown;
beforeAll(async () => {
  sheet = await shown(year);
});
afterAll(() => sheet.dispose());

const rowOf = (label: string, after = 0) => year.rows.findIndex(([cell], row) => row >= after && cell?.text === label);
const YEAR = 'The year, all beers';
const byHand = ([0, 1] as const).map((side) => BEERS.map((beer) => yearByHand(beer, side)));
const sum = (figures: readonly number[]) => figures.reduce((total, one) => total + one, 0);
const handTotal = (side: number) => sum(byHand[side]?.map(({ total }) => total) ?? []);

/** The plan of one beer as the sheet shows it. */
function planShown(letter: string, under = 'The plans now') {
  const first = rowOf('Filter area', rowOf(under)) + 1;
  const last = rowOf('Year volume', first) + 1;
  return sheet.range(`${letter}${first}:${letter}${last}`).flat() as number[];
}
const labels = () => planShown('A') as unknown as string[];

describe('the year sheet', () => {
  it('comes to the same total as a calculation by hand, now and proposed', () => {
    expect(sheet.beside('Total', { under: YEAR, column: 1 })).toBeCloseTo(handTotal(0), 4);
    expect(sheet.beside('Total', { under: YEAR, column: 2 })).toBeCloseTo(handTotal(1), 4);
    expect(sheet.beside('Total', { under: YEAR, column: 4 })).toBeCloseTo(handTotal(0) - handTotal(1), 4);
    expect(sheet.named('yearTotal')).toBeCloseTo(handTotal(0), 4);
    expect(sheet.named('yearSaved')).toBeCloseTo(handTotal(0) - handTotal(1), 4);
    expect(handTotal(0) - handTotal(1)).toBeGreaterThan(1000);
  });

  it('comes to the same items as a calculation by hand', () => {
    for (const side of [0, 1] as const) {
      const items = Object.keys(byHand[side]?.[0]?.money ?? {}) as (keyof ReturnType<typeof yearByHand>['money'])[];
      expect(items.length).toBe(10);
      for (const item of items) {
        const expected = sum(byHand[side]?.map(({ money }) => money[item]) ?? []);
        expect(sheet.beside(item, { under: YEAR, column: side + 1 }), item).toBeCloseTo(expected, 4);
      }
      const quantity = (label: string) => sheet.beside(label, { under: YEAR, column: side + 1 });
      expect(quantity('Powder as bought')).toBeCloseTo(sum(byHand[side]?.map(({ tonnes }) => tonnes.powder) ?? []), 6);
      expect(quantity('Spent cake')).toBeCloseTo(sum(byHand[side]?.map(({ tonnes }) => tonnes.cake) ?? []), 6);
      expect(quantity('Beer lost')).toBeCloseTo(sum(byHand[side]?.map(({ lost }) => lost) ?? []), 6);
      expect(quantity('Turnaround')).toBeCloseTo(sum(byHand[side]?.map(({ idle }) => idle) ?? []), 6);
    }
  });

  it('lists ten beers, each with its run, its cost and what it saves', () => {
    const first = rowOf('Beer 1');
    expect(BEERS.length).toBe(10);
    BEERS.forEach(({ yearVolume }, beer) => {
      const [now, proposed] = [byHand[0]?.[beer], byHand[1]?.[beer]];
      const row = sheet.range(`I${first + beer + 1}:M${first + beer + 1}`).flat() as number[];
      expect(row[0]).toBeCloseTo(now?.run ?? 0, 6);
      expect(row[1]).toBeCloseTo(proposed?.run ?? 0, 6);
      expect(row[2]).toBeCloseTo((now?.total ?? 0) / yearVolume, 9);
      expect(row[3]).toBeCloseTo((proposed?.total ?? 0) / yearVolume, 9);
      expect(row[4]).toBeCloseTo((now?.total ?? 0) - (proposed?.total ?? 0), 5);
    });
  });

  it('tells the saving and the break-even price of each beer as the library does', () => {
    const present = planShown('I');
    const proposed = planShown('I', 'The plans proposed');
    const plans = planOf(labels(), { present, proposed });
    const answer = answerOf(saving, plans);
    const row = rowOf('Where the saving comes from');
    answer.slice(1).forEach(([item, , , , , , saved], index) => {
      expect(year.rows[row + 2 + index]?.[0]?.text).toBe(item);
      expect(sheet.cell(`I${row + 3 + index}`)).toBeCloseTo(saved as number, 6);
    });
    expect(sheet.cell(`N${rowOf('Beer 3') + 1}`)).toBeCloseTo(figureOf(breakEven, plans), 9);
  });

  it('closes: items add up to the total, and savings to the difference of the totals', () => {
    expect(sheet.cell(year.names.closes ?? '')).toBe('closes');
    for (const name of ['itemsLeft', 'itemsLeftProposed', 'savingLeft']) expect(sheet.named(name)).toBe(0);
  });

  it('spreads the saving of the chosen beer between its ends, and ranks the guesses', () => {
    const first = rowOf('Filter area', rowOf('How sure is the saving?')) + 1;
    const last = rowOf('Year volume', first) + 1;
    const column = (letter: string) => sheet.range(`${letter}${first}:${letter}${last}`).flat() as number[];
    const [low, high] = [column('E'), column('F')];
    planShown('G').forEach((value, row) => {
      const off = column('B')[row] as number;
      expect(column('C')[row]).toBeCloseTo(value * (1 - off), 12);
      expect(column('D')[row]).toBeCloseTo(value * (1 + off), 12);
    });
    const ends = { presentLow: column('C'), presentHigh: column('D'), proposedLow: low, proposedHigh: high };
    const report = reportOf(savingSpread, planOf(labels(), ends));
    for (const label of ['Yearly saving, P10', 'Yearly saving, P90', 'Yearly saving, mean', 'Chance of saving']) {
      expect(sheet.beside(label)).toBeCloseTo(report[label] as number, 4);
    }
    expect(sheet.named('yearChance')).toBeCloseTo(report['Chance of saving'] as number, 4);
    const ranked = answerOf(sensitivity, planOf(labels(), { low, high }));
    const table = sheet.range(year.names.sensitivity ?? '');
    ranked.forEach((row, index) => {
      expect(table[index]?.[0]).toBe(row[0]);
      if (index > 0) expect(table[index]?.[1]).toBeCloseTo(row[1] as number, 9);
    });
  });

  it('finds nothing unusual in the invented plans', () => {
    for (const name of ['yearRemarks', 'yearRemarksProposed'])
      expect(sheet.range(year.names[name] ?? '').flat()).toEqual(BEERS.map(() => 0));
  });
});
