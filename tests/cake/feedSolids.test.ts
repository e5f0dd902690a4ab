import { describe, expect, it } from 'vitest';
import { call } from '../functions/answers.js';
import { reportOf } from './log.js';

const rise = (dose: number, aid: number, beer: number, solids: number, flux: number) =>
  (call('FEEDRISE', dose, aid, beer, solids, flux, 2.8, 300, 0, null) as number[][])[0]?.[0] as number;

describe('FITFEED with beer solids that are unsure alike in all runs', () => {
  const doses = [50, 70, 90, 110, 140, 170];
  const rises = doses.map((dose, run) => rise(dose, 0.1, 1e-4, 25, 5) * (run % 2 === 0 ? 1.02 : 0.98));
  const fitted = (solids: number, ...error: number[]) =>
    reportOf('FITFEED', doses, rises, 5, 2.8, solids, 300, 0, null, 0, 0, null, null, 0, ...error) as Record<
      string,
      number
    >;
  const BEER = 'Beer solids permeability';
  const relative = (report: Record<string, number>) =>
    (report[`${BEER}, standard error darcy`] as number) / (report[`${BEER} darcy`] as number);

  it('adds to the error what the fit moves by with them, and leaves the figures alone', () => {
    const without = fitted(25);
    const sure = fitted(25, 0);
    const unsure = fitted(25, 0.2);
    expect(sure).toEqual(without);
    expect(unsure[`${BEER} darcy`]).toBe(without[`${BEER} darcy`]);
    const moved = Math.log((fitted(30)[`${BEER} darcy`] as number) / (fitted(25 / 1.2)[`${BEER} darcy`] as number)) / 2;
    const times = without['Standard errors in 95 %'] as number;
    const reach = Math.hypot(times * relative(without), 1.959964 * Math.abs(moved));
    expect(times * relative(unsure)).toBeCloseTo(reach, 6);
    expect(relative(unsure)).toBeGreaterThan(1.5 * relative(without));
  });

  it('is hardly felt by a plan that reads the same beer solids, between the feeds that were run', () => {
    const made = doses.map((dose) => rise(dose, 0.1, 1e-4, 30, 5));
    const off = reportOf('FITFEED', doses, made, 5, 2.8, 25, 300) as Record<string, number>;
    const [aid, beer] = [off['Aid permeability darcy'] as number, off[`${BEER} darcy`] as number];
    expect(beer / 1e-4).toBeLessThan(0.6);
    for (const dose of [50, 80, 120, 170]) {
      expect(Math.abs(rise(dose, aid, beer, 25, 5) / rise(dose, 0.1, 1e-4, 30, 5) - 1), `${dose} g/hL`).toBeLessThan(
        0.02,
      );
    }
  });
});
