import { describe, expect, it } from 'vitest';
import { cell, sentence } from './worksheet.js';

describe('CAKEDEPTH and CAKELOAD', () => {
  it('undo each other on any septum', () => {
    for (const radius of [0, 0.5, 5, 15, 35, 10_000]) {
      for (const load of [0, 0.001, 1, 6.5, 100]) {
        const depth = cell('CAKEDEPTH', load, 300, radius) as number;
        expect(Math.abs((cell('CAKELOAD', depth, 300, radius) as number) - load)).toBeLessThanOrEqual(1e-12 * load);
      }
    }
  });

  it('run into the flat septum as the candle widens', () => {
    expect(cell('CAKEDEPTH', 6, 300, 10_000)).toBeCloseTo(cell('CAKEDEPTH', 6, 300, null) as number, 1);
    expect(cell('CAKEDEPTH', 6, 300, 15)).toBeLessThan(20);
  });

  it('take a blank radius for a flat septum', () => {
    expect(cell('CAKEDEPTH', 6, 300, 0)).toBe(20);
  });
});

describe('SLURRYWATER', () => {
  it('undoes SLURRYSTRENGTH', () => {
    const strength = cell('SLURRYSTRENGTH', 75, 500, 2200) as number;
    expect(cell('SLURRYWATER', 75, strength, 2200)).toBeCloseTo(500, 9);
  });

  it('refuses a slurry as dense as its powder', () => {
    expect(sentence('SLURRYWATER', 75, 1000, 1000)).toMatch(/^#VALUE! Slurry strength must be below Powder density/);
  });
});

describe('FEEDAFTERSWAP', () => {
  it('stops at the least body feed', () => {
    expect(cell('FEEDAFTERSWAP', 90, 60, 1, 50)).toBe(50);
    expect(cell('FEEDAFTERSWAP', 40, 60, 1, null)).toBe(0);
  });

  it('allows a least feed at the present one', () => {
    expect(cell('FEEDAFTERSWAP', 50, 60, 0.5, 50)).toBe(50);
  });

  it('refuses a least feed above the present one', () => {
    expect(sentence('FEEDAFTERSWAP', 40, 60, 0.5, 50)).toBe('#VALUE! Least body feed must not exceed Body feed.');
  });
});

describe('CAKESOLIDS', () => {
  it('counts what is left out as nothing, and moisture in percent is refused with the way to write it', () => {
    expect(cell('CAKESOLIDS', 90)).toBe(90);
    expect(sentence('CAKESOLIDS', 90, 60, 65)).toContain('For 65 percent write 65 % or 0.65.');
  });
});
