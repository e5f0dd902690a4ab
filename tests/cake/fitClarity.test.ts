import { describe, expect, it } from 'vitest';
import { call } from '../functions/answers.js';
import { columnOf, reportOf } from './log.js';

const FEEDS = [60, 80, 100, 120, 150];
/** ln haze = ln 2 − 0.01 feed. */
const made = (feeds: readonly number[]) => feeds.map((feed) => 2 * Math.exp(-0.01 * feed));

describe('FITCLARITY', () => {
  it('gives back the line that hazes were made by, and the feed at which it meets the limit', () => {
    const report = reportOf('FITCLARITY', FEEDS, made(FEEDS), 0.8);
    expect(report['Fall of the haze’s logarithm per g/hL']).toBeCloseTo(0.01, 9);
    expect(report['Least body feed g/hL']).toBeCloseTo(Math.log(2 / 0.8) / 0.01, 6);
    expect(report['Haze at the least feed run EBC']).toBeCloseTo(2 * Math.exp(-0.6), 9);
    expect(report['R²']).toBeCloseTo(1, 9);
  });

  it('takes flux out where it differs, at the flux that is asked for', () => {
    const fluxes = [4, 5, 6, 4.5, 5.5];
    const hazes = FEEDS.map((feed, run) => 2 * Math.exp(-0.01 * feed) * ((fluxes[run] as number) / 5) ** 0.8);
    const report = reportOf('FITCLARITY', FEEDS, hazes, 0.8, fluxes, 6);
    expect(report['Exponent of the flux']).toBeCloseTo(0.8, 8);
    expect(report['Least body feed g/hL']).toBeCloseTo(Math.log((2 * 1.2 ** 0.8) / 0.8) / 0.01, 5);
  });

  it('asks for more feed on the safe side the more the runs scatter, and says where that is beyond them', () => {
    const scattered = (share: number) =>
      reportOf(
        'FITCLARITY',
        FEEDS,
        made(FEEDS).map((haze, run) => haze * (1 + (run % 2 === 0 ? share : -share))),
        0.8,
      );
    const least = 'Least body feed, on the safe side g/hL';
    expect(scattered(0.05)[least]).toBeGreaterThan(scattered(0.02)[least] as number);
    const remark = (limit: number) => reportOf('FITCLARITY', FEEDS, made(FEEDS), limit).Remark as unknown as string;
    expect(remark(0.8)).toBe('none');
    expect(remark(1.5)).toContain('Less than was ever run');
    expect(remark(0.3)).toContain('beyond what was run');
    expect(remark(0.001)).toContain('No feed that was looked through');
  });

  it('has no answer where the haze does not fall, or the feeds do not differ', () => {
    const said = (feeds: readonly number[], hazes: readonly number[]) =>
      call('FITCLARITY', columnOf(feeds), columnOf(hazes), 0.8);
    expect(said([60, 80, 100], [0.8, 0.9, 1])).toMatchObject({
      code: '#N/A',
      message: expect.stringContaining('does not fall'),
    });
    expect(said([80, 80, 80], [0.8, 0.9, 1])).toMatchObject({
      code: '#N/A',
      message: expect.stringContaining('do not differ'),
    });
  });
});

describe('FEEDFORSOLIDS', () => {
  it('keeps the proportion between its ends', () => {
    const feed = (solids: number, ...ends: number[]) => call('FEEDFORSOLIDS', 90, 25, solids, ...ends);
    expect(feed(35)).toEqual([[126]]);
    expect(feed(5, 50, 150)).toEqual([[50]]);
    expect(feed(80, 50, 150)).toEqual([[150]]);
    expect(feed(25, 150, 50)).toMatchObject({ message: 'Least body feed must not exceed Most body feed.' });
  });
});
