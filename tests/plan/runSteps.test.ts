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
