import { describe, expect, it } from 'vitest';
import { call } from '../functions/answers.js';
import { byResistance, type Changed, columnsOf, rowsOf } from './columns.js';

const column = (values: readonly number[]) => values.map((one) => [one]);
const steps = (changed: Changed, volumes: readonly number[], ...more: (readonly number[] | null)[]) =>
  rowsOf('RUNSTEPS', ...columnsOf(changed), column(volumes), ...more.map((one) => one && column(one))).slice(1) as (
    | number
    | string
  )[][];

describe('RUNSTEPS', () => {
  it.each<[string, Changed]>([
    ['flat', {}],
    ['flat and compressible', { compressibility: 0.3, cakeSpace: 20 }],
    ['on a candle', { septumRadius: 15, compressibility: 0.3, cakeSpace: 900, pressureLimit: 2 }],
    ['to the run limit', { runLimit: 1500 }],
  ])('of one beer ends where RUNLENGTH does: %s', (_, changed) => {
    const run = rowsOf('RUNLENGTH', ...columnsOf(changed))[0]?.[0] as number;
    const rows = steps(changed, [700, 700, 1e6]);
    expect(rows.at(-1)?.[1]).toBeCloseTo(run, 6);
    expect(rows.at(-1)?.[5]).toMatch(/^The run ends here by /);
  });

  it('adds up layers of other beers as integrating them in thin slices does', () => {
    const made: Changed = { cakeSpace: 40, pressureLimit: 20, compressibility: 0.3 };
    const solids = [25, 60, 30];
    const volumes = [600, 200, 500];
    const found = steps(made, volumes, [90, 140, 90], solids).map((row) => row[2] as number);
    // The stress at the septum through every slice: d(p^(1−n)) = (1 − n) dp/pⁿ adds up, whatever lies above it.
    const flux = 250 / 36_000 / 50;
    let powered = 0;
    const expected = solids.map((beer, step) => {
      const [aid, gel] = [([90, 140, 90][step] as number) * 0.995, 21];
      const all = aid + gel + beer;
      const logs = aid * Math.log(0.1) + gel * Math.log(0.02) + beer * Math.log(1e-4);
      const alpha = 1 / (Math.exp(logs / all) * 9.869_232_667e-13 * 300);
      const slices = 1000;
      for (let slice = 0; slice < slices; slice++) {
        const load = (all * (volumes[step] as number)) / 1000 / 50 / slices;
        powered += (0.0028 * flux * alpha * load) / 1e5;
      }
      return 0.6 + powered ** (1 / 0.7);
    });
    for (const [step, bar] of expected.entries()) expect((found[step] as number) / bar).toBeCloseTo(1, 6);
  });

  describe('with a least flow', () => {
    it.each<[string, Changed]>([
      ['flat', { leastFlow: 100 }],
      ['flat and compressible', { leastFlow: 100, compressibility: 0.3 }],
      ['on a candle', { leastFlow: 60, septumRadius: 15, compressibility: 0.3, pressureLimit: 2 }],
    ])(
      'turns the flow down at the pressure drop limit as RUNREPORT does, in as many steps as you like: %s',
      (_, more) => {
        const changed = { cakeSpace: 900, ...more };
        const report = Object.fromEntries(rowsOf('RUNREPORT', ...columnsOf(changed))) as Record<string, number>;
        const run = report['Run hL'] as number;
        const [limit, flow] = [changed.pressureLimit ?? 4.5, changed.leastFlow as number];
        for (const volumes of [[1e6], [run * 0.6, run * 0.2, run * 0.15, 1e6]]) {
          const last = steps(changed, volumes).at(-1) as number[];
          expect((last[1] as number) / run).toBeCloseTo(1, 9);
          expect(last[2]).toBeCloseTo(limit, 9);
          expect((last[6] as number) / (report['Run time h'] as number)).toBeCloseTo(1, 5);
          expect(last[7]).toBeCloseTo(flow, 6);
          expect(last[5]).toBe('The run ends here by pressure.');
        }
      },
    );

    it('takes as long through layers of other beers as thin slices do, each at the flow that holds the limit', () => {
      const made: Changed = { cakeSpace: 900, compressibility: 0.3, leastFlow: 50 };
      const solids = [25, 60, 30];
      const volumes = [1200, 400, 900];
      const rows = steps(made, volumes, null, solids);
      let resisting = 0;
      let hours = 0;
      let flow = 250;
      const slices = 2000;
      for (const [step, beer] of solids.entries()) {
        const all = 90 * 0.995 + 21 + beer;
        const logs = 90 * 0.995 * Math.log(0.1) + 21 * Math.log(0.02) + beer * Math.log(1e-4);
        const alpha = 1 / (Math.exp(logs / all) * 9.869_232_667e-13 * 300);
        const each = (volumes[step] as number) / slices;
        for (let slice = 0; slice < slices; slice++) {
          resisting += (alpha * all * each) / 1000 / 50;
          // Bisected on the flow itself: start and cake together at 4.5 bar, or at the full flow below that.
          const drop = (one: number) =>
            (0.6 * one) / 250 + ((0.0028 * (one / 36_000 / 50) * resisting) / 1e5) ** (1 / 0.7);
          let [least, most] = [0, 250];
          for (let at = 0; drop(250) > 4.5 && at < 60; at++) {
            const middle = (least + most) / 2;
            if (drop(middle) > 4.5) most = middle;
            else least = middle;
          }
          flow = most;
          hours += each / flow;
        }
        expect((rows[step]?.[6] as number) / hours).toBeCloseTo(1, 3);
        expect((rows[step]?.[7] as number) / flow).toBeCloseTo(1, 6);
      }
      expect(flow).toBeLessThan(200);
    });

    it('ends at once where the next beer could not be held at the least flow', () => {
      const rows = steps({ cakeSpace: 900, leastFlow: 200 }, [2200, 100], null, null, [2.8, 6]);
      expect(rows).toHaveLength(2);
      expect(rows[1]?.[1]).toBe(2200);
      expect(rows[1]?.[5]).toBe('The run ends here by pressure.');
    });
  });

  it('says within which step a run ends, and goes no further', () => {
    const rows = steps({}, [1000, 300, 1000], null, [25, 60, 25]);
    expect(rows.map((row) => row[5])).toEqual(['none', 'none', 'The run ends here by pressure.']);
    expect(rows.at(-1)?.[2]).toBeCloseTo(4.5, 9);
    const early = steps({}, [1000, 3000, 1000], null, [25, 90, 25]);
    expect(early).toHaveLength(2);
  });

  it('takes thicker beer as it comes, the start with it where the plan says at which it was read', () => {
    const thick = (changed: Changed) => steps(changed, [500, 500], null, null, [2.8, 3.4])[1]?.[2] as number;
    expect(thick({ startViscosity: 2.8 }) - thick({})).toBeCloseTo(0.6 * (3.4 / 2.8 - 1), 9);
  });

  it('refuses another mix on a fitted resistance', () => {
    const answer = call('RUNSTEPS', ...columnsOf(byResistance(1.5e11)), column([500]), column([90]));
    expect(answer).toMatchObject({ code: '#VALUE!', message: expect.stringContaining('permeabilities are needed') });
  });
});
