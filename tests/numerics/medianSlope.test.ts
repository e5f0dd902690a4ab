import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases, limited } from '../../.config/properties.js';
import { sortCounting } from '../../src/numerics/inversions.js';
import { medianSlope } from '../../src/numerics/medianSlope.js';
import { processorTime } from '../processorTime.js';
import { normalDeviates } from './independent.js';

/** The median of all pairwise slopes, each made. */
function ofAllPairs(x: ArrayLike<number>, y: ArrayLike<number>): number | undefined {
  const slopes: number[] = [];
  for (let i = 0; i < x.length; i++) {
    for (let j = i + 1; j < x.length; j++) {
      if (x[i] !== x[j]) slopes.push(((y[j] as number) - (y[i] as number)) / ((x[j] as number) - (x[i] as number)) + 0);
    }
  }
  const sorted = Float64Array.from(slopes).sort();
  const half = sorted.length / 2;
  if (half === 0) return undefined;
  return ((sorted[Math.ceil(half) - 1] as number) + (sorted[Math.floor(half)] as number)) / 2;
}

const column = (length: number, value: (row: number) => number) =>
  Float64Array.from({ length }, (_, row) => value(row));
const noise = normalDeviates(7);

/** Logs as people have them; each has more pairs than are made at once. */
const LOGS: readonly (readonly [string, Float64Array, Float64Array])[] = [
  [
    'noise about a line',
    column(1001, (row) => row / 60),
    column(1001, (row) => 0.6 + (0.4 * row) / 60 + 0.1 * noise()),
  ],
  [
    'a gauge read to 0.05 bar',
    column(900, (row) => row / 60),
    column(900, (row) => Math.round(20 * (0.6 + (0.4 * row) / 60 + 0.05 * noise())) / 20),
  ],
  [
    'a stuck gauge through most of it',
    column(1200, (row) => row),
    column(1200, (row) => (row > 100 && row < 1150 ? 1 : row / 100)),
  ],
  ['times written to the hour', column(800, (row) => Math.floor(row / 9)), column(800, (row) => row / 100 + noise())],
  [
    'a pump stop with the pressure gone',
    column(1000, (row) => row / 60),
    column(1000, (row) => (row > 400 && row < 500 ? 0 : 0.6 + row / 100)),
  ],
  [
    'rows out of order',
    column(701, (row) => (row * 389) % 701),
    column(701, (row) => ((row * 389) % 701) * 0.3 + noise()),
  ],
  ['whole numbers', column(1000, (row) => row), column(1000, (row) => Math.round(row * 0.3 + 10 * noise()))],
  [
    'every reading twice',
    column(1000, (row) => Math.floor(row / 2)),
    column(1000, (row) => Math.floor(row / 2) ** 1.1),
  ],
  [
    'a gap of a year',
    column(600, (row) => (row < 300 ? row : row + 525_600) / 60),
    column(600, (row) => row / 50 + 0.1 * noise()),
  ],
];

describe('the median of all pairwise slopes', () => {
  it('is that of all pairs on small logs', () => {
    const reading = fc.tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: -50, max: 50 }));
    fc.assert(
      fc.property(fc.array(reading, { maxLength: 30 }), (rows) => {
        const x = Float64Array.from(rows, ([one]) => one);
        const y = Float64Array.from(rows, ([, one]) => one / 10);
        expect(medianSlope(x, y)).toBe(ofAllPairs(x, y));
      }),
      cases(300),
    );
  });

  it.each(LOGS)('is that of all pairs on a long log: %s', (_, x, y) => {
    const found = medianSlope(x, y) as number;
    const expected = ofAllPairs(x, y) as number;
    expect(Math.abs(found - expected)).toBeLessThanOrEqual(1e-13 * Math.abs(expected));
  });

  it('is not moved by a few readings far off', () => {
    const x = column(100, (row) => row);
    expect(
      medianSlope(
        x,
        column(100, (row) => (row % 11 === 5 ? 1e6 : 0.4 * row)),
      ),
    ).toBeCloseTo(0.4, 12);
  });

  it('gives the same answer every time, in whatever order the rows stand', () => {
    const [, x, y] = LOGS[0] as (typeof LOGS)[number];
    expect(medianSlope(x, y)).toBe(medianSlope(x, y));
    expect(medianSlope(x.toReversed(), y.toReversed())).toBe(medianSlope(x, y));
  });

  it('is none where all readings stand at one time', () => {
    expect(
      medianSlope(
        column(5, () => 3),
        column(5, (row) => row),
      ),
    ).toBeUndefined();
  });

  it('has as many slopes below it as above on 100 000 rows, and takes seconds at most', () => {
    const rows = limited(100_000);
    const x = column(rows, (row) => row / 3600);
    const y = column(rows, (row) => 0.6 + (0.4 * row) / 3600 + 0.1 * noise());
    const { result, took } = processorTime(() => medianSlope(x, y));
    const slope = result as number;
    expect(took).toBeLessThan(5000);
    // x ascends, so a pair is less steep than the slope just where it stands inverted over a line of that slope.
    const below = sortCounting(
      y.map((one, row) => one - slope * (x[row] as number)),
      new Float64Array(rows),
    ).inversions;
    expect(Math.abs(below - (rows * (rows - 1)) / 4)).toBeLessThanOrEqual(2);
  });
});

describe('counting inversions', () => {
  it('counts the pairs that stand in inverted order, and sorts', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 9 }), { maxLength: 40 }), (values) => {
        const { sorted, inversions } = sortCounting(Float64Array.from(values), new Float64Array(values.length));
        const pairs = values.flatMap((one, i) => values.slice(i + 1).map((other) => one > other));
        expect(inversions).toBe(pairs.filter(Boolean).length);
        expect([...sorted]).toEqual(values.toSorted((a, b) => a - b));
      }),
    );
  });
});
