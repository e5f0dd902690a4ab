import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue.js';
import { waterDensityAt, waterViscosityAt } from '../../src/numerics/water.js';
import { cell, sentence } from './worksheet.js';

/** IAPWS SR6-08, table of check values: K, kg/m³, µPa·s. */
const SR6 = [
  [260, 997.06836, 3058.36075],
  [298.15, 997.047013, 889.996774],
  [375, 957.00971, 276.207245],
] as const;

/** The density of air-free water after CIPM 2001, Metrologia 38 (2001) 301, from 0 to 40 °C. */
const cipm = (t: number): number =>
  999.97495 * (1 - ((t - 3.983035) ** 2 * (t + 301.797)) / (522528.9 * (t + 69.34881)));

describe('water', () => {
  it.each(SR6)(
    'at %d K has the density and viscosity that IAPWS SR6-08 prints for a check',
    (kelvin, density, viscosity) => {
      expect(Math.abs(waterDensityAt(kelvin) / density - 1)).toBeLessThan(1e-9);
      expect(Math.abs((waterViscosityAt(kelvin) * 1e6) / viscosity - 1)).toBeLessThan(2e-9);
    },
  );

  it('agrees with the density that the CIPM recommends within 1 part in a million from 0 to 40 °C', () => {
    for (let t = 0; t <= 40; t += 0.5)
      expect(Math.abs((cell('WATERDENSITY', t) as number) / cipm(t) - 1)).toBeLessThan(1e-6);
  });

  it('is given as a liquid only', () => {
    expect(sentence('WATERVISCOSITY', 100.5)).toBe(
      '#VALUE! Temperature must be from 0 to 100 °C, but 100.5 °C was given.',
    );
    expect(sentence('WATERDENSITY', -1)).toMatch(/^#VALUE! Temperature must be from 0 to 100 °C/);
  });
});

describe('BEERVISCOSITY', () => {
  // Bingham and Jackson: ethanol in water, % by mass, mPa·s at 0, 10 and 20 °C.
  it.each([
    [10, 3.311, 2.179, 1.538],
    [20, 5.319, 3.165, 2.183],
  ])('reads low below 20 °C, as its declaration says, for %d %% of ethanol in water', (_, at0, at10, at20) => {
    const cold = cell('BEERVISCOSITY', 0, at20) as number;
    const cool = cell('BEERVISCOSITY', 10, at20) as number;
    expect(cold).toBeLessThan(at0);
    expect(cool).toBeLessThan(at10);
    expect(cold / at0).toBeLessThan(cool / at10);
  });

  it('says in its own declaration that it is approximate and which way it errs', () => {
    const declared = catalogue.find(({ id }) => id === 'BEERVISCOSITY');
    expect(declared?.summary).toMatch(/^Approximate .* reads low\.$/);
    expect(declared?.method).toContain('below 20 °C the answer is too low');
  });

  it('serves beer below 0 °C, which does not freeze there', () => {
    expect(cell('BEERVISCOSITY', -1.5, 1.6)).toBeGreaterThan(cell('BEERVISCOSITY', 0, 1.6) as number);
  });
});

describe('MIXPERMEABILITY and PARTPERMEABILITY', () => {
  it('undo each other', () => {
    const mix = cell('MIXPERMEABILITY', [3, 2, 1], [1.2, 0.05, 3e-5]) as number;
    expect(cell('PARTPERMEABILITY', mix, 1, [3, 2], [1.2, 0.05])).toBeCloseTo(3e-5, 15);
  });

  it('say why where no part can give the mix, or no share is there', () => {
    expect(sentence('PARTPERMEABILITY', 5, 0.01, [1], [0.001])).toMatch(
      /^#N\/A No permeability from 1e-20 to 20 darcy gives this mix/,
    );
    expect(sentence('MIXPERMEABILITY', [0, 0, 0], [1, 2, 3])).toBe('#VALUE! Shares must not all be 0.');
  });

  it('count shares of any unit by their proportion only', () => {
    const once = cell('MIXPERMEABILITY', [3, 1], [1, 0.01]) as number;
    expect(cell('MIXPERMEABILITY', [75, 25], [1, 0.01])).toBeCloseTo(once, 15);
  });
});
