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
import { shortened } from './shortened.js';

// One book at a time: the engine keeps what it read by the names of book and sheet, and here they are all alike.
let book: Calculated;
afterEach(() => book.dispose());

const rowOf = ({ rows }: StarterSheet, label: string, after = 0) =>
  rows.findIndex(([cell], row) => row >= after && cell?.text === label) + 1;
// Its room for 2,000 readings takes seconds in each calculation.
const shortTrial = shortened({ ...trial, conditions: [] }, 40);
const shown = (place = '') => book.at(place).value;
const offersFrom = () => rowOf(quotes, 'State') + 2;

describe('a starter sheet whose figures are changed', () => {
  it('shows an unusual figure and a refused one as such, beside the figure and in what follows', async () => {
    book = await calculateStarter(dosing);
    const feed = dosing.names.feed ?? '';
    await book.enter(feed, 300);
    expect(shown(feed.replace('B', 'E'))).toMatch(/^unusual: B\d+ Present body feed is usually from 50 to 200 g\/hL/);
    await book.enter(feed, -1);
    expect(shown(feed.replace('B', 'E'))).toMatch(/^refused: B\d+ Present body feed must be/);
    expect(shown(dosing.names.feedRate)).toBe('#VALUE!');
  });

  it('gives no dose from a kind whose moisture is that of another, and takes a lot that is merely wetter or drier', async () => {
    book = await calculateStarter(dosing);
    const { presentMoisture = '', newKind = '', newMoisture = '' } = dosing.names;
    const answer = `C${rowOf(dosing, 'Stabiliser dose as bought')}`;
    await book.enter(presentMoisture, 0.7);
    expect(shown(answer)).toBeCloseTo((((60 * 0.3) / 0.35) * 0.85 * 0.99) / 0.99, 9);
    await book.enter(presentMoisture, 0.64);
    await book.enter(newKind, 'xerogel');
    expect(shown(answer)).toBeGreaterThan(20);
    await book.enter(newKind, 'hydrogel');
    expect(shown(answer)).toBe(`see ${newMoisture}`);
    expect(shown(answer.replace('C', 'F'))).toMatch(/^refused: C\d+ Moisture is far from that of the kind/);
    await book.enter(newMoisture, 0.66);
    expect(shown(answer)).toBeCloseTo((60 * 0.36) / 0.34, 9);
  }, 60_000);

  it('shows the error of a refused plan in every figure that comes of it, and none of them as 0', async () => {
    book = await calculateStarter(dosing);
    await book.enter(`B${rowOf(dosing, 'Viscosity at filter')}`, -1);
    const report = rowOf(dosing, 'Run time');
    const read = [`B${report}`, `B${report + 2}`, dosing.names.watchSlurry];
    expect(read.map(shown)).toEqual(read.map(() => '#VALUE!'));
    expect(shown(`B${rowOf(dosing, 'What ends the run')}`)).toBe(`see B${rowOf(dosing, 'Viscosity at filter')}`);
    expect(book.at(`B${report}`).message).toMatch(/Viscosity at filter must be from 0.1 to 1000 mPa·s/);
  });

  it('takes the trials as run on a candle once a radius stands there, as FITFEED does with their hours', async () => {
    book = await calculateStarter(shortTrial);
    const flat = shown(trial.names.oldFittedAid);
    await book.enter(trial.names.trialRadius ?? '', 15);
    const read = [FEED_TRIALS.map(([feed = 0]) => feed * 0.995), FEED_TRIALS.map(([, rise]) => rise)];
    const report = reportOf('FITFEED', ...read, 5, 2.8, 25, 300, 0, 1, 15, 796, 8);
    expect(shown(trial.names.oldFittedAid)).toBeCloseTo(report['Aid permeability darcy'] as number, 9);
    expect(shown(trial.names.oldFittedAid)).toBeLessThan(flat as number);
  });

  it('gives no verdict on a log that is refused', async () => {
    book = await calculateStarter(shortTrial);
    const bars = trial.names.newBars?.split(':')[0] ?? '';
    await book.enter(bars, 'stuck');
    expect(shown(trial.names.powdersVerdict)).toBe(`see ${bars}`);
    expect(shown(`B${rowOf(trial, 'Rise, two runs')}`)).toBe(`see ${bars}`);
    expect(shown(trial.names.bestFeedAnswer)).toBe(`see ${bars}`);
  });

  it('warns of a shorter run when the body feed is not cut', async () => {
    book = await calculateStarter(dosing);
    await book.enter(dosing.names.credit ?? '', 0);
    expect(shown(dosing.names.watchRun)).toContain('shorter than the present one');
  });

  it('says that two equal logs cannot be told apart', async () => {
    book = await calculateStarter(shortTrial);
    const first = Number(/\d+/.exec(trial.names.oldHours ?? '')?.[0]);
    for (const [row, [, , bar = 0]] of OLD_LOG.entries()) {
      if (bar !== NEW_LOG[row]?.[2]) await book.enter(`G${first + row}`, bar);
    }
    expect(shown(trial.names.risePerHourVerdict)).toBe('These two logs cannot be told apart from noise.');
    expect(shown(trial.names.risePerHourRatio)).toBeCloseTo(0, 6);
  }, 120_000);

  it('withholds the verdict on the powders while there is one run of each', async () => {
    book = await calculateStarter(shortTrial);
    const first = rowOf(trial, 'State') + 2;
    for (const [run] of REPEATED_RUNS.entries()) {
      for (const column of 'BC') await book.enter(`${column}${first + run}`, '');
    }
    expect(shown(trial.names.powdersVerdict)).toMatch(/^Withheld: there is one run of Old powder only/);
  }, 120_000);

  it('names an offer that cannot be ranked, and ranks all others', async () => {
    book = await calculateStarter(quotes);
    const first = offersFrom();
    const { cheapestQuote, rankedOffers = '' } = quotes.names;
    const before = shown(cheapestQuote);
    await book.enter(`C${first + 2}`, 'PVPP');
    expect(shown(cheapestQuote)).toBe(before);
    expect(shown(rankedOffers)).toBe('8 of 9');
    expect(shown(rankedOffers.replace('B', 'D'))).toBe(
      `refused: C${first + 2} Kind must be hydrogel, xerogel or adsorptive.`,
    );
    expect(shown(`A${first + 2}`)).toBe(shown(rankedOffers.replace('B', 'D')));
    expect(shown(`M${first + 2}`) ?? '').toBe('');
    for (const column of 'BCDEFGHIJK') await book.enter(`${column}${first + 2}`, '');
    expect([shown(rankedOffers), shown(`A${first + 2}`) ?? '']).toEqual(['8 of 8', '']);
    expect(shown(`M${first}`)).toBeGreaterThan(1);
  }, 120_000);

  it('takes another offer, and refuses a moisture of 65 in its own place only', async () => {
    book = await calculateStarter(quotes);
    const row = offersFrom() + OFFERS.length;
    const heads = quotes.rows[offersFrom() - 3]?.map((cell) => cell.text) ?? [];
    const letter = (head: string) => String.fromCharCode(65 + heads.indexOf(head));
    const typed = ['Gel 60', 'hydrogel', 1200, 500, 0.1, 0, 0, 0, 65] as const;
    for (const [column, content] of typed.entries())
      await book.enter(`${String.fromCharCode(66 + column)}${row}`, content);
    expect(shown(`A${row}`)).toBe(`refused: J${row} Moisture must be a fraction from 0 to 0.999.`);
    expect(shown(`${letter('Price per dry kg')}${row}`) ?? '').toBe('');
    expect(shown(`${letter('Price per dry kg')}${row - OFFERS.length}`)).toBeCloseTo(2.4 / 0.35, 9);
    await book.enter(`${letter('Moisture')}${row}`, 0.6);
    expect(shown(`A${row}`)).toBe('complete');
    expect(shown(`${letter('Landed price')}${row}`)).toBeCloseTo(2.5, 9);
    expect(shown(`${letter('Price per dry kg')}${row}`)).toBeCloseTo(6.25, 9);
    expect(shown(`${letter('Rank')}${row}`)).toBeGreaterThan(0);
  }, 60_000);

  it('sees that a year no longer closes when a beer’s figure is overwritten', async () => {
    book = await calculateStarter(year);
    const total = rowOf(year, 'Total', rowOf(year, 'The year, all beers'));
    await book.enter(`B${total}`, 0);
    expect(shown(year.names.closes)).toBe('does not close');
  });

  it('names what is unusual of a beer in its own row and in the answer', async () => {
    book = await calculateStarter(year);
    const row = rowOf(year, 'The beers') + 4;
    await book.enter(`D${row + 1}`, 9);
    expect(shown(`A${row + 1}`)).toMatch(new RegExp(`^unusual: D${row + 1} Viscosity at filter is usually`));
    expect(shown(year.names.beersInSums?.replace('B', 'E'))).toBe(shown(`A${row + 1}`));
    expect(shown(`A${row}`)).toBe('complete');
  }, 60_000);

  it('looks at another beer when it is named, and at none that is not there', async () => {
    book = await calculateStarter(year);
    const volume = rowOf(year, 'Year volume', rowOf(year, 'How sure is the saving? Of one beer'));
    expect(shown(`C${volume}`)).toBe(140_000);
    await book.enter(year.names.chosenBeer ?? '', 'Beer 3');
    expect(shown(`C${volume}`)).toBe(70_000);
    await book.enter(year.names.chosenBeer ?? '', 'Beer 33');
    expect(shown(year.names.yearChance)).toBe(`see ${year.names.chosenBeer}`);
    expect(shown(year.names.yearSaved)).toBeGreaterThan(1000);
  }, 60_000);
});
