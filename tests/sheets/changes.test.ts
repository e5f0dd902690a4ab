import { afterEach, describe, expect, it } from 'vitest';
import { dosing } from '../../src/sheets/dosing.js';
import { OFFERS } from '../../src/sheets/quotes/offers.js';
import { quotes } from '../../src/sheets/quotes.js';
import type { StarterSheet } from '../../src/sheets/sheet.js';
import { FEED_TRIALS, NEW_LOG, OLD_LOG, REPEATED_RUNS } from '../../src/sheets/trial/logs.js';
import { trial } from '../../src/sheets/trial.js';
import { year } from '../../src/sheets/year.js';
import { reportOf } from '../cake/log.js';
import { type Calculated, calculateStarter } from '../workbook/headless.js';

// One book at a time: the engine keeps what it read by the names of book and sheet, and here they are all alike.
let book: Calculated;
afterEach(() => book.dispose());

const rowOf = ({ rows }: StarterSheet, label: string, after = 0) =>
  rows.findIndex(([cell], row) => row >= after && cell?.text === label) + 1;
const shown = (place = '') => book.at(place).value;

describe('a starter sheet whose figures are changed', () => {
  it('shows an unusual figure and a refused one as such, beside the figure and in what follows', async () => {
    book = await calculateStarter(dosing);
    const feed = dosing.names.feed ?? '';
    await book.enter(feed, 300);
    expect(shown(feed.replace('B', 'E'))).toMatch(/^unusual: Body feed is usually from 50 to 200 g\/hL/);
    await book.enter(feed, -1);
    expect(shown(feed.replace('B', 'E'))).toMatch(/^refused: Body feed must be/);
    expect(shown(dosing.names.feedRate)).toBe('#VALUE!');
  });

  it('asks about a kind whose moisture is that of another, and about no lot that is merely wetter or drier', async () => {
    book = await calculateStarter(dosing);
    const { presentMoisture = '', presentUsualMoisture = '', watchKind } = dosing.names;
    const judged = presentUsualMoisture.replace('B', 'E');
    const entered = async (moisture: number) => {
      await book.enter(presentMoisture, moisture);
      return [shown(judged), shown(watchKind)];
    };
    expect(await entered(0.7)).toEqual(['usual', 'Moistures and kinds go together.']);
    expect(await entered(0.06)).toEqual([
      'unusual: the moisture found is far from that of hydrogel, so check both',
      expect.stringContaining('check both'),
    ]);
  });

  it('shows the error of a refused plan in every figure that comes of it, and none of them as 0', async () => {
    book = await calculateStarter(dosing);
    await book.enter(`B${rowOf(dosing, 'Viscosity at filter')}`, -1);
    const report = rowOf(dosing, 'Run time');
    const read = [`B${report}`, `B${report + 2}`, `B${rowOf(dosing, 'What ends the run')}`, dosing.names.watchSlurry];
    expect(read.map(shown)).toEqual(read.map(() => '#VALUE!'));
    expect(book.at(`B${report}`).message).toMatch(/Viscosity at filter must be from 0.1 to 1000 mPa·s/);
  });

  it('takes the trials as run on a candle once a radius stands there, as FITFEED does with their hours', async () => {
    book = await calculateStarter(trial);
    const flat = shown(trial.names.oldFittedAid);
    await book.enter(trial.names.trialRadius ?? '', 15);
    const read = [FEED_TRIALS.map(([feed = 0]) => feed * 0.995), FEED_TRIALS.map(([, rise]) => rise)];
    const report = reportOf('FITFEED', ...read, 5, 2.8, 25, 300, 0, 1, 15, 796, 8);
    expect(shown(trial.names.oldFittedAid)).toBeCloseTo(report['Aid permeability darcy'] as number, 9);
    expect(shown(trial.names.oldFittedAid)).toBeLessThan(flat as number);
  });

  it('gives no verdict on a log that is refused', async () => {
    book = await calculateStarter(trial);
    const bars = trial.names.newBars?.split(':')[0] ?? '';
    await book.enter(bars, 'stuck');
    expect(shown(trial.names.risePerHourVerdict)).toBe('#VALUE!');
    expect(shown(trial.names.powdersVerdict)).toBe('#VALUE!');
    expect(shown(`B${rowOf(trial, 'Rise, two runs')}`)).toBe('#VALUE!');
  });

  it('warns of a shorter run when the body feed is not cut', async () => {
    book = await calculateStarter(dosing);
    await book.enter(dosing.names.credit ?? '', 0);
    expect(shown(dosing.names.watchRun)).toContain('shorter than the present one');
  });

  it('says that two equal logs cannot be told apart', async () => {
    book = await calculateStarter(trial);
    const first = Number(/\d+/.exec(trial.names.oldHours ?? '')?.[0]);
    for (const [row, [, , bar = 0]] of OLD_LOG.entries()) {
      if (bar !== NEW_LOG[row]?.[2]) await book.enter(`F${first + row}`, bar);
    }
    expect(shown(trial.names.risePerHourVerdict)).toBe('These two logs cannot be told apart from noise.');
    expect(shown(trial.names.risePerHourRatio)).toBeCloseTo(0, 6);
  }, 30_000);

  it('withholds the verdict on the powders while there is one run of each', async () => {
    book = await calculateStarter(trial);
    const [, first = ''] = /^A(\d+)/.exec(trial.names.repeatedPowders ?? '') ?? [];
    for (const [run] of REPEATED_RUNS.entries()) {
      for (const column of 'AB') await book.enter(`${column}${Number(first) + 2 + run}`, '');
    }
    expect(shown(trial.names.powdersVerdict)).toMatch(/^Withheld: there is one run of Old powder only/);
  }, 30_000);

  it('ranks nothing while an offer is refused, and all the others once it is emptied', async () => {
    book = await calculateStarter(quotes);
    const first = rowOf(quotes, OFFERS[0]?.name ?? '');
    const { cheapestQuote, cheapestCost } = quotes.names;
    const before = shown(cheapestQuote);
    await book.enter(`B${first + 2}`, 'PVPP');
    expect([shown(cheapestQuote), shown(cheapestCost)]).toEqual(['an offer is refused', '#VALUE!']);
    expect([shown(`Q${first}`), shown(`Q${first + 2}`)]).toEqual(['not ranked', 'not ranked']);
    for (const column of 'ABCDEFGHIJ') await book.enter(`${column}${first + 2}`, '');
    expect(shown(cheapestQuote)).toBe(before);
    expect(shown(`Q${first}`)).toBeGreaterThan(1);
    expect(shown(`Q${first + 2}`) ?? '').toBe('');
  }, 30_000);

  it('takes another offer, and refuses a moisture of 65 in its own place only', async () => {
    book = await calculateStarter(quotes);
    const first = rowOf(quotes, OFFERS[0]?.name ?? '');
    const row = first + OFFERS.length;
    const heads = quotes.rows[first - 3]?.map((cell) => cell.text) ?? [];
    const letter = (head: string) => String.fromCharCode(65 + heads.indexOf(head));
    const typed = ['Gel 60', 'hydrogel', 1200, 500, 0.1, 0, 0, 0, 65] as const;
    for (const [column, content] of typed.entries())
      await book.enter(`${String.fromCharCode(65 + column)}${row}`, content);
    expect(shown(`${letter('Landed price')}${row}`)).toBeCloseTo(2.5, 9);
    expect(shown(`${letter('Price per dry kg')}${row}`)).toBe('#VALUE!');
    expect(shown(`${letter('Price per dry kg')}${first}`)).toBeCloseTo(2.4 / 0.35, 9);
    expect(shown(`${letter('Moisture')}${first + 12}`)).toBe(1);
    await book.enter(`${letter('Moisture')}${row}`, 0.6);
    expect(shown(`${letter('Price per dry kg')}${row}`)).toBeCloseTo(6.25, 9);
    expect(shown(`${letter('Rank')}${row}`)).toBeGreaterThan(0);
  });

  it('sees that a year no longer closes when a beer’s figure is overwritten', async () => {
    book = await calculateStarter(year);
    const total = rowOf(year, 'Total', rowOf(year, 'The year, all beers'));
    await book.enter(`B${total}`, 0);
    expect(shown(year.names.closes)).toBe('does not close');
  });

  it('counts what is unusual in the plan of that beer alone', async () => {
    book = await calculateStarter(year);
    await book.enter(`C${rowOf(year, 'Beer 2')}`, 9);
    const now = rowOf(year, 'Figures that are unusual or refused');
    const proposed = rowOf(year, 'Figures that are unusual or refused', now);
    expect([shown(`G${now}`), shown(`H${now}`), shown(`H${proposed}`)]).toEqual([0, 1, 1]);
  });

  it('looks at another beer when its number is chosen', async () => {
    book = await calculateStarter(year);
    const volume = rowOf(year, 'Year volume', rowOf(year, 'How sure is the saving?'));
    expect(shown(`C${volume}`)).toBe(140_000);
    await book.enter(year.names.chosenBeer ?? '', 3);
    expect(shown(`C${volume}`)).toBe(70_000);
  });
});
