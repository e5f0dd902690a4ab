import { type PublishedCheck, printed } from './check.js';
import { unit } from './unit.js';

const CASES = '27 CFR 25.158, barrel equivalents of cases, to 5 decimals';

/** Fluid ounces in a bottle, bottles in a case, barrels. */
const OUNCE_CASES: readonly (readonly [number, number, number])[] = [
  [6, 12, 0.01815],
  [6, 24, 0.03629],
  [7, 12, 0.02117],
  [7, 24, 0.04234],
  [7, 32, 0.05645],
  [7, 35, 0.06174],
  [7, 36, 0.06351],
  [7, 40, 0.07056],
  [7, 48, 0.08468],
  [8, 12, 0.02419],
  [8, 24, 0.04839],
  [8, 36, 0.07258],
  [8, 48, 0.09677],
  [10, 12, 0.03024],
  [10, 24, 0.06048],
  [10, 48, 0.12097],
  [11, 12, 0.03327],
  [11, 24, 0.06653],
  [11.5, 24, 0.06956],
  [12, 12, 0.03629],
  [12, 15, 0.04536],
  [12, 20, 0.06048],
  [12, 24, 0.07258],
  [12, 30, 0.09073],
  [12, 48, 0.14516],
  [12, 50, 0.15121],
  [14, 12, 0.04234],
  [14, 24, 0.08468],
  [16, 12, 0.04839],
  [16, 24, 0.09677],
  [22, 12, 0.06653],
  [22, 24, 0.13306],
  [24, 12, 0.07258],
  [24, 24, 0.14516],
  [30, 12, 0.09073],
  [32, 12, 0.09677],
  [40, 12, 0.12097],
  [64, 1, 0.01613],
  [64, 4, 0.06452],
  [64, 6, 0.09677],
  [128, 1, 0.03226],
  [288, 1, 0.07258],
];

/** Millilitres in a bottle, bottles in a case, barrels. */
const METRIC_CASES: readonly (readonly [number, number, number])[] = [
  [500, 24, 0.10226],
  [750, 12, 0.0767],
  [1000, 12, 0.10226],
  [2000, 6, 0.10226],
  [5000, 1, 0.04261],
];

const cases = (table: typeof OUNCE_CASES, from: string): readonly PublishedCheck[] =>
  table.map(([size, bottles, barrels]) => ({
    ...unit(
      size * bottles,
      from,
      'US beer barrel',
      barrels,
      printed(barrels, 5),
      `${CASES}: ${bottles} × ${size} ${from}`,
      'published',
    ),
    table: CASES,
  }));

/** The whole table of cases that US brewers pay tax by. */
export const barrelChecks: readonly PublishedCheck[] = [
  ...cases(OUNCE_CASES, 'US fl oz'),
  ...cases(METRIC_CASES, 'mL'),
];
