import { type PublishedCheck, printed } from './check.js';

/** Cases of other buyers that are the same arithmetic: feeds by dry matter, landfill, batches. */
const FEEDS =
  'sheepandgoat.com, Comparing feed costs: barley of 89 % dry matter at 0.063 a lb, 0.071 dry; hydroponic fodder of 12 % at 0.05, 0.417 dry';
const ENERGY =
  'K. Hoppe, NDSU Extension, Pricing alternative feeds, 2009: energy of corn at 0.0576 a lb; middlings with 70 % of it in 90 % of dry matter are worth 72.57 a ton';
const CORN =
  'K. Hoppe, NDSU Extension, Pricing alternative feeds, 2009: corn at 2.50 a bushel of 56 lb and 14 %, 0.0519 dry';
const LANDFILL = 'mfgcalcs.com, Scrap landfill cost, worked example: 42 tons at 132 and hauling for 540, 6,084';
const TRIPS =
  'codingace.net, Tipping cost, example data: 24, 30 and 12 tons in loads of 12, 10 and 12 are 2, 3 and 1 trips';
const BATCHES = 'mfgcalcs.com, Batch size, worked example: 60,000 a year in runs of 4,619 are 12.99 runs';

const QUOTES = {
  names: ['hydroponic fodder', 'barley'],
  prices: [0.05, 0.063],
  moistures: [0.88, 0.11],
  dryDoses: [100],
};

export const purchaseChecks: readonly PublishedCheck[] = [
  ...(
    [
      ['barley', 'Dry price per kg', 0.071, 3],
      ['hydroponic fodder', 'Dry price per kg', 0.417, 3],
      ['barley', 'Rank', 1, 0],
      ['hydroponic fodder', 'Rank', 2, 0],
    ] as const
  ).map(
    ([row, column, expected, decimals]): PublishedCheck => ({
      calculation: 'RANKQUOTES',
      given: QUOTES,
      row,
      column,
      expected,
      tolerance: column === 'Rank' ? 1e-12 : printed(expected, decimals),
      source: FEEDS,
      kind: 'published',
    }),
  ),
  {
    calculation: 'DRYPRICE',
    given: { price: 2.5 / 56, moisture: 0.14 },
    expected: 0.0519,
    tolerance: printed(0.0519, 4),
    source: CORN,
    kind: 'published',
  },
  {
    calculation: 'BREAKEVENPRICE',
    // As the dose stands what of the middlings holds a lb of corn's energy, as the cost what that lb costs.
    given: { presentCost: 0.0576, otherCost: 0, dose: 1000 / (0.7 * 0.9) },
    expected: 72.57 / 2000,
    tolerance: 0.01 / 72.57,
    wider: 'the page cuts 72.576 off',
    source: ENERGY,
    kind: 'published',
  },
  {
    calculation: 'DISPOSALCOST',
    given: { wetCake: 42_000, price: 132, load: 42, haul: 540 },
    expected: 6084,
    tolerance: 1e-12,
    source: LANDFILL,
    kind: 'published',
  },
  ...(
    [
      [24, 12, 2],
      [30, 10, 3],
      [12, 12, 1],
    ] as const
  ).map(
    ([tons, load, trips]): PublishedCheck => ({
      calculation: 'DISPOSALCOST',
      given: { wetCake: tons * 1000, price: 0, load, haul: 1 },
      expected: trips,
      tolerance: 1e-12,
      source: TRIPS,
      kind: 'published',
    }),
  ),
  {
    calculation: 'RUNSPERYEAR',
    given: { volume: 60_000, run: 4619 },
    expected: 12.99,
    tolerance: printed(12.99, 2),
    source: BATCHES,
    kind: 'published',
  },
];
