import { describe, expect, it } from 'vitest';
import { quantile } from '../../src/numerics/quantile.js';
import { triangular } from '../../src/numerics/triangular.js';

const draws = (seed: number, count: number) => {
  const next = triangular(seed);
  return Float64Array.from({ length: count }, next);
};
const mean = (values: Float64Array) => values.reduce((sum, one) => sum + one, 0) / values.length;

describe('a triangular draw', () => {
  it('lies from 0 to 1 with the moments of the triangular distribution: mean 1/2, variance 1/24', () => {
    const values = draws(7, 200_000);
    expect(Math.min(...values.subarray(0, 50_000))).toBeGreaterThanOrEqual(0);
    expect(Math.max(...values.subarray(0, 50_000))).toBeLessThan(1);
    expect(Math.abs(mean(values) - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 24 / 200_000));
    const square = mean(values.map((one) => (one - 0.5) ** 2));
    // Fourth central moment 1/240, so the variance of a square is 1/240 − 1/576.
    expect(Math.abs(square - 1 / 24)).toBeLessThan(4 * Math.sqrt((1 / 240 - 1 / 576) / 200_000));
  });

  it('has the quantiles of the triangular distribution: √(q/2) below the middle, 1 − √((1 − q)/2) above it', () => {
    const sorted = draws(3, 200_000).sort();
    for (const share of [0.01, 0.1, 0.25, 0.5, 0.75, 0.9, 0.99]) {
      const exact = share < 0.5 ? Math.sqrt(share / 2) : 1 - Math.sqrt((1 - share) / 2);
      const density = 4 * Math.min(exact, 1 - exact);
      const error = Math.sqrt((share * (1 - share)) / 200_000) / density;
      expect(Math.abs(quantile(sorted, share) - exact)).toBeLessThan(4 * error);
    }
  });

  it('comes again with the same seed, and differs with its neighbour from the first draw on', () => {
    expect(draws(1, 100)).toEqual(draws(1, 100));
    const first = Float64Array.from({ length: 2000 }, (_, seed) => triangular(seed + 1)());
    expect(Math.abs(mean(first) - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 24 / 2000));
    const steps = first.slice(1).map((one, seed) => (one - 0.5) * ((first[seed] as number) - 0.5));
    expect(Math.abs(mean(steps))).toBeLessThan(4 / 24 / Math.sqrt(2000));
  });

  it('does not tell the next draw', () => {
    const values = draws(11, 100_000);
    const products = values.slice(1).map((one, place) => (one - 0.5) * ((values[place] as number) - 0.5));
    expect(Math.abs(mean(products))).toBeLessThan(4 / 24 / Math.sqrt(100_000));
  });
});

describe('a quantile', () => {
  it('is interpolated as worksheets do it', () => {
    // Hyndman and Fan, type 7: of 1, 2, 3, 4 the quarter lies at 1 + 3 × 0.25 = 1.75.
    expect(quantile(Float64Array.of(1, 2, 3, 4), 0.25)).toBe(1.75);
    expect(quantile(Float64Array.of(1, 2, 3, 4), 0.5)).toBe(2.5);
    expect(quantile(Float64Array.of(1, 2, 3, 4), 1)).toBe(4);
    expect(quantile(Float64Array.of(5), 0.9)).toBe(5);
  });
});
