import { planCells } from '../plan/sheet.js';
import { type PublishedCheck, printed } from './check.js';

const source =
  'an invented plan, reckoned apart from this code from the closed forms of cake filtration at constant flow';

/** The filter aid that also takes up haze protein, in place of the hydrogel. */
const SWAPPED = {
  stabiliserDose: 51,
  stabiliserMoisture: 0.01,
  stabiliserPermeability: 0.08,
  stabiliserPrice: 2.8,
};

type Changed = Parameters<typeof planCells>[0];

const check = (
  calculation: Uppercase<string>,
  changed: Changed,
  row: string | undefined,
  expected: number | string,
  decimals = 0,
): PublishedCheck => ({
  calculation,
  given: { labels: planCells(changed) },
  expected,
  tolerance: typeof expected === 'number' ? printed(expected, decimals) : 0,
  source,
  kind: 'derived',
  ...(row === undefined ? {} : { row }),
});

const run = (changed: Changed, expected: number, decimals: number) =>
  check('RUNLENGTH', changed, undefined, expected, decimals);
const total = (changed: Changed, expected: number) => check('FILTRATIONCOST', changed, 'Total', expected, 4);

export const planChecks: readonly PublishedCheck[] = [
  {
    calculation: 'CAKESOLIDS',
    given: { feed: 90, stabiliser: 60, stabiliserMoisture: 0.65, beerSolids: 25, aidMoisture: 0.005 },
    expected: 135.55,
    tolerance: 1e-9,
    source,
    kind: 'derived',
  },
  run({}, 2104.0, 1),
  run({ bodyFeed: 0 }, 362.5, 1),
  run({ bodyFeed: 300 }, 828, 0),
  run({ compressibility: 0.2 }, 1818, 0),
  check('RUNREPORT', {}, 'Rise at the start bar/h', 0.408, 3),
  check('RUNREPORT', {}, 'Rise at the end bar/h', 0.408, 3),
  check('RUNREPORT', {}, 'End pressure drop bar', 4.04, 2),
  check('RUNREPORT', {}, 'Ends by', 'cake space'),
  check('RUNREPORT', { compressibility: 0.2 }, 'Ends by', 'pressure'),
  total({}, 0.6112),
  check('BESTFEED', {}, 'Body feed of least cost g/hL', 79.57, 2),
  check('BESTFEED', {}, 'Run hL', 2279, 0),
  check('BESTFEED', {}, 'Least cost per hL', 0.5726, 4),
  run({ ...SWAPPED, bodyFeed: 90 }, 1728.1, 1),
  total({ ...SWAPPED, bodyFeed: 90 }, 0.696),
  run({ ...SWAPPED, bodyFeed: 60 }, 2109.6, 1),
  total({ ...SWAPPED, bodyFeed: 60 }, 0.5849),
  run({ ...SWAPPED, bodyFeed: 50 }, 2277.2, 1),
  total({ ...SWAPPED, bodyFeed: 50 }, 0.5479),
];
