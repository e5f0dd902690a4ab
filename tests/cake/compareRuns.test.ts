import { describe, expect, it } from 'vitest';
import { neededEach, visible } from '../../src/numerics/twoGroups.js';
import { call } from '../functions/answers.js';
import { normalDeviates } from '../numerics/independent.js';
import { columnOf } from './log.js';

const compared = (powders: readonly string[], figures: readonly number[], worth?: number) =>
  new Map(
    call('COMPARERUNS', columnOf(powders), columnOf(figures), ...(worth ? [worth] : [])) as [string, string | number][],
  );

describe('COMPARERUNS', () => {
  it('withholds its verdict while there is one run of a powder, but says the difference', () => {
    const report = compared(['Old', 'New', 'New'], [0.4, 0.3, 0.3]);
    expect(report.get('Verdict')).toMatch(/^Withheld: there is one run of Old only/);
    expect(report.get('Difference')).toBeCloseTo(-0.25, 12);
    expect(report.get('Difference, 95 % from')).toBe('');
  });

  it('says which is lower or higher, whether that matters, and where runs are alike or too few', () => {
    const old = ['A', 'B', 'B', 'A', 'A', 'B'];
    expect(compared(old, [0.42, 0.35, 0.37, 0.4, 0.43, 0.36]).get('Verdict')).toMatch(/^B is lower by 14 % \(95 %: 6/);
    expect(compared(old, [0.4, 0.41, 0.411, 0.401, 0.4, 0.41]).get('Verdict')).toContain('less than the 5 %');
    expect(compared(old, [0.4, 0.401, 0.4, 0.402, 0.4, 0.401]).get('Verdict')).toMatch(/^Alike within 5 %/);
    const open = compared(old, [0.42, 0.35, 0.45, 0.36, 0.43, 0.37]);
    expect(open.get('Verdict')).toMatch(/^Not told apart yet/);
    expect(open.get('Further runs of each that would settle it')).toBeGreaterThan(0);
  });

  it('does not mind the case of names, and refuses a third and a blank one', () => {
    expect(compared(['old', 'New', 'OLD', 'new'], [1, 2, 1, 2]).get('Runs of the first powder')).toBe(2);
    expect(call('COMPARERUNS', columnOf(['a', 'b', 'c']), columnOf([1, 2, 3]))).toMatchObject({
      message: 'Powders must name two powders, but 3 were named.',
    });
    expect(call('COMPARERUNS', columnOf(['a', '', 'b']), columnOf([1, 2, 3]))).toMatchObject({
      message: 'Powders, row 2, is blank: name the powder of each run.',
    });
  });

  it('calls one powder two kinds in 5 % of 2,000 trials, and further runs settle four of five', () => {
    const noise = normalDeviates(21);
    const names = ['A', 'B', 'B', 'A', 'A', 'B', 'B', 'A'];
    const trial = (difference: number, turns: readonly string[]) =>
      compared(
        turns,
        turns.map((name) => Math.exp((name === 'B' ? difference : 0) + 0.06 * noise())),
      );
    let called = 0;
    for (let one = 0; one < 2000; one++)
      if ((trial(0, names).get('Chance that runs of one powder differ as much') as number) < 0.05) called++;
    expect(called / 2000).toBeGreaterThan(0.037);
    expect(called / 2000).toBeLessThan(0.063);
    const each = neededEach(0.08, 0.06, 0.8, 500) as number;
    const turns = Array.from({ length: 2 * each }, (_, run) => (run % 2 === 0 ? 'A' : 'B'));
    let settled = 0;
    for (let one = 0; one < 1000; one++)
      if (trial(0.08, turns).get('Further runs of each that would settle it') === 0) settled++;
    expect(settled / 1000).toBeGreaterThan(0.76);
    expect(settled / 1000).toBeLessThan(0.86);
  });
});

describe('TRIALPLAN', () => {
  it('takes as many runs as R’s power.t.test says: 22.02 of each for one standard deviation at 90 % (from memory)', () => {
    const share = Math.expm1(0.5);
    const rows = call('TRIALPLAN', share, share, 0.9) as (string | number)[][];
    expect(rows.length - 1).toBe(2 * 23);
    expect(neededEach(1, 1, 0.9, 500)).toBe(23);
  });

  it('turns pairs about, so that an even drift befalls both alike, and shows less after each pair', () => {
    const rows = (call('TRIALPLAN', 0.1, 0.05) as (string | number)[][]).slice(1);
    const place = (name: string) => rows.flatMap(([run, powder]) => (powder === name ? [Number(run)] : []));
    const sum = (list: readonly number[]) => list.reduce((all, one) => all + one, 0);
    expect(sum(place('old'))).toBe(sum(place('new')));
    const seen = rows.flatMap(([, , one]) => (one === '' ? [] : [Number(one)]));
    expect(seen).toEqual([...seen].sort((a, b) => b - a));
    expect(seen.at(-1)).toBeLessThanOrEqual(0.1);
    expect(seen.at(-2)).toBeGreaterThan(0.1);
  });

  it('has no answer where nobody would make so many runs', () => {
    expect(call('TRIALPLAN', 0.001, 0.1)).toMatchObject({ code: '#N/A' });
    expect(visible(500, 0.1, 0.8)).toBeGreaterThan(0.001);
  });
});
