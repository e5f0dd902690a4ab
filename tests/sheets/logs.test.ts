import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { triangular } from '../../src/numerics/triangular.js';
import { logList } from '../../src/sheets/trial/logList.js';
import { NEW_LOG, OLD_LOG } from '../../src/sheets/trial/logs.js';
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
