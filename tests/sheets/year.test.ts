import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { breakEven } from '../../src/plan/breakEven.js';
import { saving } from '../../src/plan/saving.js';
import { savingSensitivity } from '../../src/plan/savingSensitivity.js';
import { savingSpread } from '../../src/plan/savingSpread.js';
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

const LIST = rowOf('The beers') + 2;
const heads = year.rows[LIST]?.map((cell) => cell.text) ?? [];
const letterOf = (head: string) => String.fromCharCode(65 + heads.indexOf(head));
/** A column of the list of beers, below its unit. */
const listed = (head: string) =>
  sheet.range(`${letterOf(head)}${LIST + 3}:${letterOf(head)}${LIST + 2 + BEERS.length}`).flat() as number[];

/** The plan of a beer, now or proposed, as a person writes it down from the sheet. */
function planShown(beer: number, side: 0 | 1) {
  const first = rowOf('Filter area') + 1;
  const last = rowOf('Other cost', first) + 1;
  const letter = side === 0 ? 'B' : 'C';
  const labels = sheet.range(`A${first}:A${last}`).flat() as string[];
  const values = sheet.range(`${letter}${first}:${letter}${last}`).flat() as number[];
  const said = side === 0 ? 'now' : 'proposed';
  const own = ['Year volume', 'Viscosity at filter', 'Beer solids', 'Body feed', 'Stabiliser dose'];
  const columns = ['Year volume', 'Viscosity at filter', 'Beer solids', `Body feed ${said}`, `Stabiliser dose ${said}`];
  return { labels: [...labels, ...own], values: [...values, ...columns.map((head) => listed(head)[beer] as number)] };
}

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
    expect(BEERS.length).toBe(10);
    BEERS.forEach(({ yearVolume }, beer) => {
      const [now, proposed] = [byHand[0]?.[beer], byHand[1]?.[beer]];
      expect(listed('Run now')[beer]).toBeCloseTo(now?.run ?? 0, 6);
      expect(listed('Run proposed')[beer]).toBeCloseTo(proposed?.run ?? 0, 6);
      expect(listed('Cost now')[beer]).toBeCloseTo((now?.total ?? 0) / yearVolume, 9);
      expect(listed('Cost proposed')[beer]).toBeCloseTo((proposed?.total ?? 0) / yearVolume, 9);
      expect(listed('Saved per year')[beer]).toBeCloseTo((now?.total ?? 0) - (proposed?.total ?? 0), 5);
    });
  });

  it('tells the saving and the break-even price of each beer as the library does', () => {
    BEERS.forEach((_, beer) => {
      const [now, proposed] = [planShown(beer, 0), planShown(beer, 1)];
      const plans = planOf(now.labels, { present: now.values, proposed: proposed.values });
      const total = answerOf(saving, plans).at(-1)?.at(-1) as number;
      expect(listed('Saved per year')[beer]).toBeCloseTo(total, 6);
      expect(listed('Break-even price')[beer]).toBeCloseTo(figureOf(breakEven, plans), 9);
    });
  });

  it('closes: items add up to the total, and savings to the difference of the totals', () => {
    expect(sheet.cell(year.names.closes ?? '')).toBe('closes');
    expect(sheet.cell(year.names.beersInSums ?? '')).toBe('10 of 10');
  });

  it('spreads the saving of the beer that is named between its ends, and ranks the guesses by what they do to it', () => {
    const first = rowOf('Filter area', rowOf('How sure is the saving? Of one beer')) + 1;
    const last = rowOf('Year volume', first) + 1;
    const column = (letter: string) => sheet.range(`${letter}${first}:${letter}${last}`).flat() as number[];
    const labels = column('A') as unknown as string[];
    const [now, proposed] = [planShown(0, 0), planShown(0, 1)];
    for (const [plan, low, high] of [
      [now, 'C', 'D'],
      [proposed, 'E', 'F'],
    ] as const) {
      labels.forEach((label, row) => {
        const value = plan.values[plan.labels.indexOf(label)] as number;
        const off = column('B')[row] as number;
        expect(column(low)[row]).toBeCloseTo(value * (1 - off), 12);
        expect(column(high)[row]).toBeCloseTo(value * (1 + off), 12);
      });
    }
    const ends = {
      presentLow: column('C'),
      presentHigh: column('D'),
      proposedLow: column('E'),
      proposedHigh: column('F'),
    };
    const report = reportOf(savingSpread, planOf(labels, ends));
    for (const label of ['Yearly saving, P10', 'Yearly saving, P90', 'Yearly saving, mean', 'Chance of saving']) {
      expect(sheet.beside(label)).toBeCloseTo(report[label] as number, 4);
    }
    expect(sheet.named('oneSaving')).toBeCloseTo(report['Yearly saving, mean'] as number, 4);
    const ranked = answerOf(savingSensitivity, planOf(labels, ends));
    const table = sheet.range(year.names.sensitivity ?? '');
    ranked.forEach((row, index) => {
      expect(table[index]?.slice(0, 2).map((cell) => cell ?? '')).toEqual(row.slice(0, 2));
      if (index > 0) expect(table[index]?.[2]).toBeCloseTo(row[2] as number, 6);
    });
  });

  it('never shows a chance that is not certain as certain', () => {
    // Not one of the samples loses, which is no certainty: others might.
    expect(sheet.beside('Chance of saving')).toBeGreaterThan(0.999);
    expect(sheet.cell(year.names.yearChance ?? '')).toBe('above 99.9 %');
  });

  it('finds every beer and every figure of the invented plans usual', () => {
    for (let beer = 0; beer < BEERS.length; beer++) expect(sheet.cell(`A${LIST + 3 + beer}`)).toBe('complete');
  });
});
