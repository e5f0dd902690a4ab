import { describe, expect, it } from 'vitest';
import { call } from '../functions/answers.js';
import { columnsOf, rowsOf } from './columns.js';
import { planMatrices } from './sheet.js';

type Report = Readonly<Record<string, number>>;
const bestFeed = (leastFeed: number, ...more: (number | null)[]) =>
  Object.fromEntries(rowsOf('BESTFEED', ...columnsOf({ leastFeed }), ...more)) as Report;

/** The invented plan costs least at 79.57 g/hL. */
describe('a plan’s least body feed for clarity', () => {
  it('is as low as BESTFEED goes, which then says that clarity sets the feed', () => {
    const free = bestFeed(0);
    expect(bestFeed(60)['Body feed of least cost g/hL']).toBe(free['Body feed of least cost g/hL']);
    expect(bestFeed(60)['Within 1 % of the least cost from g/hL']).toBeGreaterThanOrEqual(60);
    const bound = bestFeed(95);
    expect(bound['Body feed of least cost g/hL']).toBeCloseTo(95, 9);
    expect(bound.Remark).toMatch(/^At the least body feed allowed: clarity, not cost, sets the feed\./);
    expect(bound['Least cost per hL']).toBeGreaterThan(free['Least cost per hL'] as number);
  });

  it('yields to a higher least of the call, and is refused at or above the most', () => {
    expect(bestFeed(85, 95)['Body feed of least cost g/hL']).toBeCloseTo(95, 9);
    expect(bestFeed(95, 85)['Body feed of least cost g/hL']).toBeCloseTo(95, 9);
    expect(call('BESTFEED', ...columnsOf({ leastFeed: 250 }))).toMatchObject({
      message: 'Least body feed must lie below Most body feed.',
    });
  });

  it('bounds FEEDFORRUN below, and leaves RUNLENGTH alone', () => {
    const forRun = (leastFeed: number) =>
      Object.fromEntries(rowsOf('FEEDFORRUN', ...columnsOf({ leastFeed }), 2000)) as Report;
    expect(forRun(0)['Least body feed g/hL']).toBeLessThan(75);
    expect(forRun(90)).toEqual({ ...forRun(0), 'Least body feed g/hL': 90 });
    expect(call('FEEDFORRUN', ...columnsOf({ leastFeed: 120 }), 2000)).toMatchObject({ code: '#N/A' });
    expect(rowsOf('RUNLENGTH', ...columnsOf({ leastFeed: 120 }))).toEqual(rowsOf('RUNLENGTH', ...columnsOf({})));
  });

  it('is held against the body feed by PLANCHECK', () => {
    const said = (leastFeed: number): Readonly<Record<string, string>> => {
      const [labels, values] = planMatrices({ leastFeed });
      const verdicts = call('PLANCHECK', labels, values) as string[][];
      return Object.fromEntries(labels.map(([label], row) => [label, verdicts[row]?.[0] ?? '']));
    };
    expect(said(80)['Body feed']).toBe('usual');
    expect(said(100)['Body feed']).toBe(
      'unusual: Body feed lies below Least body feed for clarity, 100 g/hL: the beer would not be clear.',
    );
    expect(said(100)['Least body feed for clarity']).toBe('usual');
  });
});
