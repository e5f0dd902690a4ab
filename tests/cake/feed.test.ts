import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { call } from '../functions/answers.js';
import { normalDeviates } from '../numerics/independent.js';
import { columnOf, reportOf } from './log.js';

const rise = (dose: number, aid: number, beer: number, solids: number, flux: number, stabiliser = 0, own?: number) =>
  (call('FEEDRISE', dose, aid, beer, solids, flux, 2.8, 300, stabiliser, own ?? null) as number[][])[0]?.[0] as number;

describe('FITFEED', () => {
  it('gives back the permeabilities that FEEDRISE was given, runs and stabiliser however mixed', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 1, noNaN: true }),
        fc.double({ min: 1e-6, max: 0.01, noNaN: true }),
        fc.constantFrom(0, 21),
        (aid, beer, stabiliser) => {
          const doses = [50, 70, 90, 120, 160];
          const fluxes = [4, 5, 6, 5, 4];
          const solids = [20, 25, 30, 25, 15];
          const rises = doses.map((dose, run) =>
            rise(dose, aid, beer, solids[run] as number, fluxes[run] as number, stabiliser, 0.02),
          );
          const report = reportOf('FITFEED', doses, rises, fluxes, 2.8, solids, 300, stabiliser, 0.02);
          expect((report['Aid permeability darcy'] as number) / aid).toBeCloseTo(1, 8);
          expect((report['Beer solids permeability darcy'] as number) / beer).toBeCloseTo(1, 7);
        },
      ),
      { numRuns: 50 },
    );
  });

  it('has standard errors that hold the truth about as often as they say, over seeded scatter', () => {
    const noise = normalDeviates(3);
    const doses = [40, 60, 80, 100, 130, 160, 200, 240];
    const trials = 500;
    let aid = 0;
    let beer = 0;
    for (let trial = 0; trial < trials; trial++) {
      const rises = doses.map((dose) => rise(dose, 0.1, 1e-4, 25, 5) * Math.exp(0.05 * noise()));
      const report = reportOf('FITFEED', doses, rises, 5, 2.8, 25, 300);
      const holds = (label: string, truth: number) =>
        Math.abs((report[`${label} darcy`] as number) - truth) < (report[`${label}, standard error darcy`] as number);
      if (holds('Aid permeability', 0.1)) aid++;
      if (holds('Beer solids permeability', 1e-4)) beer++;
    }
    // Six degrees of freedom hold the truth within one standard error in 64 % of trials.
    for (const held of [aid, beer]) expect(Math.abs(held / trials - 0.64)).toBeLessThan(0.07);
  });

  it('refuses stabiliser without its permeability', () => {
    const call3 = (...rest: unknown[]) =>
      call('FITFEED', columnOf([60, 90, 120]), columnOf([0.4, 0.33, 0.3]), 5, 2.8, 25, 300, ...rest);
    expect(call3(20)).toMatchObject({
      code: '#VALUE!',
      message: expect.stringContaining('Stabiliser permeability is needed'),
    });
    expect(call3(0)).toEqual(call3());
  });

  it('has no answer where aid and beer solids keep one proportion', () => {
    expect(call('FITFEED', columnOf([90, 90, 90]), columnOf([0.4, 0.41, 0.39]), 5, 2.8, 25, 300)).toMatchObject({
      code: '#N/A',
    });
  });

  it('remarks where the aid comes out no more permeable than the beer solids', () => {
    const report = reportOf('FITFEED', [60, 90, 120], [0.1, 0.2, 0.4], 5, 2.8, 25, 300) as unknown as Record<
      string,
      string
    >;
    expect(report.Remark).toContain('which cannot be');
  });
});

describe('FEEDRISE', () => {
  it('is least for each hL where the dry solids reach H, and rises on both sides', () => {
    // H = b ln(k_aid/k_beer): 25 ln 1000 = 172.69, so the body feed there is 147.69 g/hL.
    const best = 25 * Math.log(1000) - 25;
    const at = (dose: number) => rise(dose, 0.1, 1e-4, 25, 5);
    expect(at(best)).toBeLessThan(at(best - 1));
    expect(at(best)).toBeLessThan(at(best + 1));
  });
});

describe('CAKEPRESSURE', () => {
  const pressure = (...args: (number | null)[]) => (call('CAKEPRESSURE', ...args) as number[][])[0]?.[0] as number;

  it('adds the medium to the cake', () => {
    const cake = pressure(5, 2, 1, 1e11);
    expect(pressure(5, 2, 1, 1e11, 1e10)).toBeCloseTo(cake + (2e-3 * (5 / 36_000) * 1e10) / 1e5, 12);
  });

  it('of a compressible cake solves Δp = μ u α₁ (Δp/bar)^n w', () => {
    const n = 0.4;
    const found = pressure(5, 2, 3, 1e11, 0, n);
    expect(found).toBeCloseTo((2e-3 * (5 / 36_000) * 1e11 * found ** n * 3) / 1e5, 10);
  });

  it('is the same at 1 bar whatever the compressibility', () => {
    const load = 1e5 / (2e-3 * (5 / 36_000) * 1e11);
    for (const n of [0, 0.3, 0.9]) expect(pressure(5, 2, load, 1e11, 0, n)).toBeCloseTo(1, 9);
  });

  it('is less on a candle than on a flat septum, and asks for the density there', () => {
    expect(pressure(5, 2, 5, 1e11, 0, 0, 15, 300)).toBeLessThan(pressure(5, 2, 5, 1e11));
    expect(call('CAKEPRESSURE', 5, 2, 5, 1e11, 0, 0, 15)).toMatchObject({ code: '#VALUE!' });
  });
});

describe('FITCOMPRESSION', () => {
  it('gives back an exact power law', () => {
    const pressures = [0.5, 1, 2, 4];
    const report = reportOf(
      'FITCOMPRESSION',
      pressures,
      pressures.map((one) => 1.2e11 * one ** 0.35),
    );
    expect(report.Exponent).toBeCloseTo(0.35, 12);
    expect((report['Resistance at 1 bar m/kg'] as number) / 1.2e11).toBeCloseTo(1, 12);
  });

  it('remarks on an exponent that no cake has or no plan reads', () => {
    const remark = (exponent: number) =>
      (
        reportOf(
          'FITCOMPRESSION',
          [1, 2, 4],
          [1, 2, 4].map((one) => 1e11 * one ** exponent),
        ) as unknown as Record<string, string>
      ).Remark;
    expect(remark(-0.2)).toContain('no cake has');
    expect(remark(0.95)).toBe('Beyond 0.9 the exponent serves no plan.');
    expect(remark(0.5)).toBe('none');
  });
});

describe('RISERATE', () => {
  it('needs two readings at different times', () => {
    expect(call('RISERATE', columnOf([0, 2]), columnOf([1, 1.8]))).toEqual([[0.4]]);
    expect(call('RISERATE', columnOf([2, 2]), columnOf([1, 1.8]))).toMatchObject({ code: '#N/A' });
    expect(call('RISERATE', columnOf([2]), columnOf([1]))).toMatchObject({ code: '#VALUE!' });
  });
});

describe('FITFEED on a candle', () => {
  const doses = [60, 90, 120];
  const candle = (until: unknown, septumRadius = 15) =>
    call('FITFEED', columnOf(doses), columnOf([0.4, 0.33, 0.3]), 5, 2.8, 25, 300, null, null, septumRadius, 796, until);

  it('asks for the hours over which each rise was read', () => {
    expect(candle(null)).toMatchObject({
      code: '#VALUE!',
      message: expect.stringMatching(/^Rise read until, row 1, is needed on a candle, where the rise changes/),
    });
    expect(candle(columnOf([8, 0, 8]))).toMatchObject({ message: expect.stringContaining('Rise read until, row 2,') });
    expect(candle(null, 0)).toEqual(candle(8, 0));
  });

  it('finds less permeable solids than a flat septum with the same rises, since the cake grew outward', () => {
    const beer = (answer: unknown) =>
      Object.fromEntries(answer as [string, number][])['Aid permeability darcy'] as number;
    expect(beer(candle(8))).toBeLessThan(beer(candle(8, 0)));
  });
});
