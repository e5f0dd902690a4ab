import { afterEach, describe, expect, it } from 'vitest';
import { dosing } from '../../src/sheets/dosing.js';
import { starterSheets } from '../../src/sheets/index.js';
import { quotes } from '../../src/sheets/quotes.js';
import type { StarterSheet } from '../../src/sheets/sheet.js';
import { OLD_LOG } from '../../src/sheets/trial/logs.js';
import { trial } from '../../src/sheets/trial.js';
import { year } from '../../src/sheets/year.js';
import { checkWorkbook } from '../../taskpane/pane/check/checkWorkbook.js';
import { readAll } from '../../taskpane/workbook/grid/readAll.js';
import { handled } from '../sheets/handled.js';
import { type Calculated, calculateStarter } from '../workbook/headless.js';

let book: Calculated;
afterEach(() => book.dispose());

const found = async () => {
  const { findings } = await checkWorkbook(readAll(book.grid), { scope: 'workbook' });
  return findings.map(
    ({ kind, place, sentence, subject }) => `${kind} ${place.top + 1},${place.left + 1} ${sentence ?? subject}`,
  );
};
const rowOf = ({ rows }: StarterSheet, label: string, after = 0) =>
  rows.findIndex(([cell], row) => row >= after && cell?.text === label) + 1;

describe('the check of the starter sheets', () => {
  it.each(starterSheets)('finds nothing on $name as it comes', async (starter) => {
    book = await calculateStarter(starter);
    expect(await found()).toEqual([]);
  });

  it('finds what is missing, refused, doubled or of another kind, each once, where it stands', async () => {
    book = await calculateStarter(quotes);
    const offer = rowOf(quotes, 'State') + 2;
    await book.enter(`D${offer}`, '');
    await book.enter(`B${offer + 2}`, 'Gel 62 from supplier 2');
    await book.enter(quotes.names.agreedMoisture ?? '', '');
    const said = await found();
    expect(said).toEqual(
      expect.arrayContaining([
        `refused ${offer},4 Pack price is missing.`,
        `unusual ${offer + 2},2 stands further up as well: both are ranked.`,
        expect.stringMatching(/^refused \d+,2 Agreed moisture is missing\.$/),
      ]),
    );
    expect(said.filter((one) => one.startsWith('refused')).length).toBe(3);
  });

  it('finds a unit typed behind a figure of one beer, and a moisture left over from another kind', async () => {
    book = await calculateStarter(year);
    const beer = rowOf(year, 'State') + 2;
    await book.enter(`D${beer}`, '2.9 mPas');
    expect(await found()).toContain(`refused ${beer},4 Viscosity at filter must be a number from 0.1 to 1000 mPa·s.`);
    book.dispose();
    book = await calculateStarter(dosing);
    await book.enter(dosing.names.newKind ?? '', 'hydrogel');
    expect(await found()).toContainEqual(expect.stringMatching(/^refused \d+,3 Moisture is far from that of the kind/));
  }, 60_000);

  it('finds a log that is mixed with the example’s, a gap in a reading, and a flow that is not the log’s', async () => {
    const on = await handled(trial);
    book = on.book;
    const first = Number(/\d+/.exec(trial.names.oldHours ?? '')?.[0]);
    const last = first + OLD_LOG.length - 1;
    const own = Array.from({ length: 25 }, (_, reading) => [reading / 5, 90 * reading, 0.7 + 0.05 * reading]);
    await on.paste(`B${first}`, own);
    await on.book.enter(`F${first + 3}`, '');
    const said = await found();
    expect(said).toContain(`refused ${first + 3},6 Volume, new is missing or no number: a row has all of its figures.`);
    await on.book.enter(`F${first + 3}`, 180);
    const flow = rowOf(trial, 'Flow');
    expect(await found()).toEqual(
      expect.arrayContaining([
        `refused ${last},2 and others, 9 of 34, are still the example’s: two logs are mixed.`,
        `unusual ${flow},2 Flow is not that of the log: its hours and volumes give 262 hL/h.`,
      ]),
    );
  }, 60_000);
});
