import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { triangular } from '../../src/numerics/triangular.js';
import { logList } from '../../src/sheets/trial/logList.js';
import { FEED_TRIALS, NEW_LOG, OLD_LOG, REPEATED_RUNS } from '../../src/sheets/trial/logs.js';
import { trial } from '../../src/sheets/trial.js';
import { type Handled, handled } from './handled.js';
import { PASTED, placesOf } from './rowChanges.js';
import { shortened } from './shortened.js';

// Room for more than is pasted; marks by colour change no answer, and take the longest.
const starter = shortened({ ...trial, conditions: [] }, 180);
const first = Number(/\d+/.exec(starter.names.oldHours ?? '')?.[0]);
const { powdersVerdict = '', bestFeedAnswer = '', oldReadings = '' } = starter.names;

let on: Handled;
beforeEach(async () => {
  on = await handled(starter);
});
afterEach(() => on.book.dispose());

const shown = (place: string) => on.shown(place);

/** A log of one’s own: none of its readings is the example’s. */
function ownLog(readings: number, rise: number, flow = 240): number[][] {
  const next = triangular(5);
  return Array.from({ length: readings }, (_, reading) => {
    const hours = reading / 12;
    return [hours, hours * flow, 0.7 + rise * hours + 0.02 * (next() - 0.5)];
  });
}

/** Least squares by hand: the rise with the volume, and from it the resistance of a flat cake. */
function riseByHand(log: readonly (readonly number[])[]): number {
  const [x, y] = [1, 2].map((column) => log.map((row) => row[column] as number)) as [number[], number[]];
  const mean = (all: number[]) => all.reduce((sum, one) => sum + one, 0) / all.length;
  const [mx, my] = [mean(x), mean(y)];
  const above = x.reduce((sum, one, index) => sum + (one - mx) * ((y[index] as number) - my), 0);
  return (240 * above) / x.reduce((sum, one) => sum + (one - mx) ** 2, 0);
}

const rowOf = (label: string) => starter.rows.findIndex(([cell]) => cell?.text === label) + 1;
const riseShown = (run: 0 | 1) => shown(`${'BC'[run]}${rowOf('Rise')}`) as number;
const readings = (run: 0 | 1) => shown(oldReadings.replace('B', 'BC'[run] as string));
const judged = (run: 0 | 1) => String(shown(oldReadings.replace('B', 'EF'[run] as string)));

describe('the logs of the trial log', () => {
  it.each(PASTED)(
    'take %i readings pasted over the example’s, once those that are left over are gone',
    async (count) => {
      const own = ownLog(count, 0.3);
      const last = first + OLD_LOG.length - 1;
      await on.paste(`B${first}`, own);
      if (count < OLD_LOG.length) {
        expect(judged(0)).toBe(
          `refused: B${last} and others, ${OLD_LOG.length - count} of ${OLD_LOG.length}, are still the example’s: two logs are mixed.`,
        );
        for (const answer of [powdersVerdict, bestFeedAnswer]) expect(shown(answer)).toBe(`see B${last}`);
        await on.paste(
          `B${first + count}`,
          Array.from({ length: OLD_LOG.length - count }, () => ['', '', '']),
        );
      }
      expect(readings(0)).toBe(count);
      expect(judged(0)).toBe('sound');
      expect(riseShown(0)).toBeCloseTo(riseByHand(own), 6);
      expect(riseShown(1)).toBeCloseTo(riseByHand(NEW_LOG), 6);
      expect(shown(powdersVerdict)).toMatch(/^Not told apart yet/);
    },
  );

  it('pass over blank rows, wherever they stand', async () => {
    const before = [riseShown(0), riseShown(1), shown(powdersVerdict)];
    await on.putIn(first + 10, 2);
    expect(judged(0)).toBe('sound');
    expect([riseShown(0), riseShown(1), shown(powdersVerdict)]).toEqual(before);
  });

  it('name a figure that no gauge shows', async () => {
    await on.book.enter(`G${first + 4}`, -9);
    expect(judged(1)).toBe(`refused: G${first + 4} Pressure, new must be from -1 to 100 bar.`);
    expect(shown(powdersVerdict)).toBe(`see G${first + 4}`);
    await on.book.enter(`G${first + 4}`, 9.5);
    expect(judged(1)).toBe(`unusual: G${first + 4} Pressure, new is usually from 0 to 8 bar.`);
  });

  it('name a reading whose figure is missing, and nothing is shown that rests on it', async () => {
    await on.book.enter(`F${first + 4}`, '');
    expect(shown(`A${first + 4}`)).toBe(
      `refused: F${first + 4} Volume, new is missing or no number: a row has all of its figures.`,
    );
    for (const answer of [powdersVerdict, bestFeedAnswer]) expect(shown(answer)).toBe(`see F${first + 4}`);
  });

  it('read a row put in or taken out at any place, the first and the last among them', async () => {
    for (const place of placesOf(OLD_LOG.length)) {
      await on.takeOut(first + place);
      const left = OLD_LOG.filter((_, row) => row !== place);
      expect(riseShown(0), `without ${place}`).toBeCloseTo(riseByHand(left), 6);
      expect(readings(0)).toBe(left.length);
      await on.putIn(first + place);
      await on.paste(`B${first + place}`, [[...(OLD_LOG[place] as number[]), ...(NEW_LOG[place] as number[])]]);
      expect(riseShown(0), `with ${place} again`).toBeCloseTo(riseByHand(OLD_LOG), 6);
      expect(shown(powdersVerdict)).toMatch(/^New powder is lower by/);
    }
  }, 120_000);

  it('are refused where hours go back, as where one log stands below another', async () => {
    const own = ownLog(40, 0.3);
    await on.paste(`B${first}`, [...own, ...own]);
    expect(judged(0)).toBe(`refused: B${first + 40} goes back: another log begins here, or the rows are not in order.`);
    expect(shown(powdersVerdict)).toBe(`see B${first + 40}`);
  });

  it('are compared with the flow that is entered', async () => {
    const flow = `B${rowOf('Flow')}`;
    const verdict = () => String(shown(flow.replace('B', 'E')));
    await on.paste(`B${first}`, ownLog(60, 0.3, 450));
    expect(verdict()).toBe(
      `refused: ${flow} Flow is not that of the log: its hours and volumes give 450 hL/h., example’s`,
    );
    expect(shown(powdersVerdict)).toBe(`see ${flow}`);
    await on.book.enter(flow, 425);
    expect(verdict()).toMatch(/^unusual: B\d+ Flow is not that of the log/);
    await on.book.enter(flow, 450);
    expect(verdict()).toBe('usual');
  });

  it('still are the example’s with one or two other figures tried in them', async () => {
    await on.book.enter(`D${first + 5}`, 1.21);
    expect(judged(0)).toBe('sound');
    expect(shown(powdersVerdict)).toMatch(/^New powder is lower by/);
  });

  it('have room for two thousand readings, each of which counts', async () => {
    on.book.dispose();
    on = await handled({ ...trial, conditions: [] });
    const own = ownLog(logList.room, 0.02);
    await on.paste(`B${first}`, own);
    expect(readings(0)).toBe(2000);
    expect(judged(0)).toBe('sound');
    expect(riseShown(0)).toBeCloseTo(riseByHand(own), 6);
  }, 120_000);
});

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
