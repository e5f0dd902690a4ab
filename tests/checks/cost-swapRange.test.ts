import { describe, expect, it } from 'vitest';
import { call } from './worksheet.js';

describe('SWAPRANGE', () => {
  // Common practice with no source: hydrogel to adsorptive 0.7–1, xerogel to adsorptive 1.5–2. A way back divides by
  // the forward factor, so its low end is the forward high end; hydrogel to xerogel is 0.7/2, 0.85/1.75 and 1/1.5.
  it.each([
    ['hydrogel', 'adsorptive', [42, 51, 60]],
    ['xerogel', 'adsorptive', [90, 105, 120]],
    ['adsorptive', 'hydrogel', [60, 60 / 0.85, 60 / 0.7]],
    ['adsorptive', 'xerogel', [30, 60 / 1.75, 40]],
    ['hydrogel', 'xerogel', [60 * 0.35, 60 * 0.4857, 60 * 0.667]],
    ['hydrogel', 'hydrogel', [60, 60, 60]],
  ] as const)('of 60 g/hL from %s to %s gives %j', (from, to, expected) => {
    const [row] = call('SWAPRANGE', 60, from, to) as [number[]];
    expect(row).toHaveLength(3);
    // The catalogue prints the composed factors to three and four digits.
    for (const [place, value] of expected.entries()) {
      expect(Math.abs((row[place] as number) / value - 1)).toBeLessThan(6e-4);
    }
  });
});
