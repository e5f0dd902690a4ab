import { afterEach, describe, expect, it } from 'vitest';
import { starterSheets } from '../../src/sheets/index.js';
import type { StarterSheet } from '../../src/sheets/sheet.js';
import { address } from '../../taskpane/workbook/grid/place.js';
import { type Calculated, calculateStarter } from '../workbook/headless.js';
import { answersOf } from './shown.js';
import { type Content, type Figure, figuresOf, spoilings, toSpoil } from './spoilings.js';

let book: Calculated;
afterEach(() => book?.dispose());

/** All figures of all sheets take minutes: `npm run spoil` spoils them all, and each test run all of one and some of the others. */
const STEP = process.env.POWDERBOOK_SPOIL ? 1 : 5;
const triedOf = (starter: StarterSheet, sheet: StarterSheet) =>
  figuresOf(sheet).filter((_, index) => starter.key === 'dosing' || index % STEP === 0);

/** A figure within the limits that is not the one that stands there. */
const another = ({ number, limit: [least, most] }: Figure): number =>
  [number * 1.01, number * 0.99, (least + most) / 2].find((one) => one !== number && one >= least && one <= most) ??
  number;

describe.each(starterSheets)('the starter sheet $name, each of its figures spoiled in turn,', (starter) => {
  it('names the cell in every answer that rests on it, and leaves all others as they are', async () => {
    // Marks by colour change no answer, and take the longest.
    const sheet = { ...toSpoil(starter), conditions: [] };
    book = await calculateStarter(sheet);
    const answers = answersOf(sheet);
    const shown = () => answers.map((one) => book.at(one).value);
    const before = shown();
    const named = (at: string) =>
      sheet.rows
        .slice(0, Number(/\d+/.exec(answers.at(-1) ?? '')?.[0]))
        .some((row, r) => row.some((_, c) => new RegExp(`\\b${at}\\b`).test(String(book.at(address(r, c)).value))));
    /** Whether an answer names the cell, or one that shows an error: what may be blank by itself can still be missed. */
    const tellsOf = (answer: unknown, { at }: Figure) => {
      const place = /^see ([A-Z]+\d+)$/.exec(String(answer))?.[1];
      return place === at || (place !== undefined && String(book.at(place).value).startsWith('#'));
    };
    const after = async (at: string, content: Content) => {
      await book.enter(at, content);
      return shown();
    };
    const emptiedRows = new Map<string, typeof before>();
    /** What the answers show where a row of a list is empty. */
    async function withoutRow(row: readonly { readonly at: string; readonly content: Content }[]) {
      const known = emptiedRows.get(row[0]?.at ?? '');
      if (known) return known;
      for (const one of row) await book.enter(one.at, '');
      const answered = shown();
      for (const one of row) await book.enter(one.at, one.content);
      emptiedRows.set(row[0]?.at ?? '', answered);
      return answered;
    }
    const wrong: string[] = [];
    let cases = 0;
    for (const figure of triedOf(starter, sheet)) {
      const { at, number, limit, row } = figure;
      const moved = (await after(at, another(figure))).map((value, index) => value !== before[index]);
      const asZero = limit[0] === 0 ? await after(at, 0) : undefined;
      for (const content of spoilings(figure)) {
        cases += 1;
        const now = await after(at, content);
        const zero = content === '' && JSON.stringify(now) === JSON.stringify(asZero) && !named(at);
        if (zero) continue;
        if (row && !named(at)) wrong.push(`${at} ${content}: not named`);
        const without = row && (await withoutRow(row));
        now.forEach((value, index) => {
          const same = without ? value === without[index] : !moved[index] && value === before[index];
          if (!same && !tellsOf(value, figure)) wrong.push(`${at} ${content}: ${answers[index]} shows ${value}`);
        });
      }
      if (JSON.stringify(await after(at, number)) !== JSON.stringify(before)) wrong.push(`${at}: not as before`);
    }
    expect(cases).toBeGreaterThan(12);
    expect(wrong).toEqual([]);
  }, 600_000);
});
