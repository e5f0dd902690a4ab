import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { FEED_TRIALS, REPEATED_RUNS } from '../../src/sheets/trial/logs.js';
import { trial } from '../../src/sheets/trial.js';
import { type Handled, handled } from './handled.js';
import { placesOf } from './rowChanges.js';
import { shortened } from './shortened.js';

// Marks by colour change no answer, and take the longest.
const starter = shortened({ ...trial, conditions: [] }, 30);
const { powdersVerdict = '', bestFeedAnswer = '' } = starter.names;

let on: Handled;
beforeEach(async () => {
  on = await handled(starter);
});
afterEach(() => on.book.dispose());

const shown = (place: string) => on.shown(place);
const rowOf = (label: string) => starter.rows.findIndex(([cell]) => cell?.text === label) + 1;
const riseShown = (run: 0 | 1) => shown(`${'BC'[run]}${rowOf('Rise')}`) as number;

describe('the lists of runs and feed trials', () => {
  const runs = rowOf('State') + 2;

  it('take a run put in anywhere, and name one that cannot be compared', async () => {
    const count = `B${rowOf('Runs that are compared')}`;
    const before = shown(powdersVerdict);
    await on.putIn(runs);
    const moved = (place: string) => place.replace(/\d+/, (row) => `${Number(row) + 1}`);
    expect(shown(powdersVerdict)).toBe(before);
    await on.paste(`B${runs}`, [['New powder', 0.95]]);
    expect(shown(moved(count))).toBe(9);
    expect(shown(powdersVerdict)).toMatch(/^Not told apart yet/);
    await on.paste(`B${runs}`, [['Gel 62', 0.35]]);
    expect(shown(powdersVerdict)).toBe(`see B${runs}`);
    expect(shown(moved(count))).toBe(8);
    await on.paste(`B${runs}`, [['New powder', '']]);
    expect(shown(powdersVerdict)).toBe(`see C${runs}`);
    await on.takeOut(runs);
    expect(shown(powdersVerdict)).toBe(before);
  });

  it('compare the runs that are there after one is taken out at any place, and put in again', async () => {
    const before = shown(powdersVerdict);
    const logged = [['Old powder', riseShown(0)] as const, ['New powder', riseShown(1)] as const];
    /** The means of the logarithms, new less old, as a share. */
    const byHand = (listed: typeof REPEATED_RUNS) => {
      const all = [...logged, ...listed];
      const mean = (powder: string) => {
        const own = all.filter(([name]) => name === powder).map(([, rise]) => Math.log(rise));
        return own.reduce((sum, one) => sum + one, 0) / own.length;
      };
      return Number((100 * Math.abs(Math.expm1(mean('New powder') - mean('Old powder')))).toPrecision(2));
    };
    for (const place of placesOf(REPEATED_RUNS.length)) {
      await on.takeOut(runs + place);
      const left = REPEATED_RUNS.filter((_, row) => row !== place);
      expect(shown(powdersVerdict), `without run ${place}`).toContain(`New powder is lower by ${byHand(left)} %`);
      await on.putIn(runs + place);
      await on.paste(`B${runs + place}`, [[...(REPEATED_RUNS[place] as readonly [string, number])]]);
      expect(shown(powdersVerdict), `run ${place}`).toBe(before);
    }
  }, 120_000);

  it('fit the feed trials that are there after one is taken out at any place, and put in again', async () => {
    const trials = starter.rows.findIndex(([cell], row) => row > runs && cell?.text === 'State') + 3;
    const count = `B${rowOf('Feed trials that are read')}`;
    const shownNow = () => [shown(bestFeedAnswer), shown(starter.names.trialLeastFeed ?? '')];
    const before = shownNow();
    for (const place of placesOf(FEED_TRIALS.length)) {
      const above = count.replace(/\d+/, (row) => `${Number(row) - 1}`);
      await on.takeOut(trials + place);
      expect(shown(above)).toBe(FEED_TRIALS.length - 1);
      await on.putIn(trials + place);
      expect(shown(count)).toBe(FEED_TRIALS.length - 1);
      await on.paste(`B${trials + place}`, [[...(FEED_TRIALS[place] as readonly number[])]]);
      expect(shownNow(), `trial ${place}`).toEqual(before);
    }
  }, 120_000);

  it('ask for the hours of a feed trial on a candle, and only there', async () => {
    const trials = starter.rows.findIndex(([cell], row) => row > runs && cell?.text === 'State') + 3;
    await on.book.enter(`D${trials}`, '');
    expect(shown(bestFeedAnswer)).toMatch(/g\/hL with the new powder/);
    await on.book.enter(starter.names.trialRadius ?? '', 15);
    expect(shown(bestFeedAnswer)).toBe(`see D${trials}`);
    await on.book.enter(`D${trials}`, 8);
    expect(shown(bestFeedAnswer)).toMatch(/g\/hL with the new powder/);
  });
});
