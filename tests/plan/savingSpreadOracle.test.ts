import { describe, expect, it } from 'vitest';
import type { Changed } from './columns.js';
import { type Ends, independentSavings, type Ranges } from './independentSpread.js';
import { spread } from './spread.js';

describe('SAVINGSPREAD beside a second program', () => {
  const one = (low: number, high = low): Ends => ({ low, high });
  const ranges: Ranges = {
    present: {
      feed: one(80, 100),
      dose: one(55, 65),
      moisture: one(0.65),
      permeability: one(0.01, 0.04),
      price: one(2.4),
    },
    proposed: {
      feed: one(60, 80),
      dose: one(48, 56),
      moisture: one(0.01),
      permeability: one(0.05, 0.12),
      price: one(2.4, 3.4),
    },
    shared: { solids: one(18, 32), beerDarcy: one(5e-5, 2e-4), disposal: one(40, 100), start: one(0.2, 5) },
  };
  const plan = (side: 'present' | 'proposed', end: 'low' | 'high'): Changed => ({
    bodyFeed: ranges[side].feed[end],
    stabiliserDose: ranges[side].dose[end],
    stabiliserMoisture: ranges[side].moisture[end],
    stabiliserPermeability: ranges[side].permeability[end],
    stabiliserPrice: ranges[side].price[end],
    beerSolids: ranges.shared.solids[end],
    beerSolidsPermeability: ranges.shared.beerDarcy[end],
    disposalPrice: ranges.shared.disposal[end],
    startPressure: ranges.shared.start[end],
  });
  const N = 40_000;
  const ours = spread(
    [plan('present', 'low'), plan('present', 'high'), plan('proposed', 'low'), plan('proposed', 'high')],
    N,
    5,
    ['Body feed', 'Stabiliser dose', 'Stabiliser permeability', 'Stabiliser price'],
  );
  const { savings, withoutRun } = independentSavings(ranges, N, 99);
  const mean = savings.reduce((sum, saving) => sum + saving, 0) / savings.length;

  it('has the same chance of saving within its standard error', () => {
    const chance = savings.filter((saving) => saving > 0).length / savings.length;
    const error = Math.sqrt((chance * (1 - chance)) / savings.length);
    expect(chance).toBeGreaterThan(0.6);
    expect(chance).toBeLessThan(0.99);
    expect(Math.abs(ours.error / error - 1)).toBeLessThan(0.05);
    expect(Math.abs(ours.chance - chance)).toBeLessThan(3 * Math.hypot(error, ours.error));
  });

  it('has the same mean and the same quantiles within theirs', () => {
    const deviation = Math.sqrt(savings.reduce((sum, saving) => sum + (saving - mean) ** 2, 0) / savings.length);
    expect(Math.abs(ours.mean - mean)).toBeLessThan(3 * deviation * Math.sqrt(2 / savings.length));
    for (const [share, value] of [
      [0.1, ours.p10],
      [0.5, ours.p50],
      [0.9, ours.p90],
    ] as const) {
      // The share of the second program's savings below our quantile, by its binomial error.
      const below = savings.filter((saving) => saving < value).length / savings.length;
      expect(Math.abs(below - share)).toBeLessThan(3 * Math.sqrt((2 * share * (1 - share)) / savings.length));
    }
  });

  it('counts as many samples without a run', () => {
    expect(withoutRun).toBeGreaterThan(100);
    expect(Math.abs(ours.withoutRun - withoutRun)).toBeLessThan(3 * Math.sqrt(2 * withoutRun));
  });
});
