import { type PublishedCheck, printed } from './check.js';
import { costMoistureChecks } from './cost-moisture.js';

const derived = (
  calculation: Uppercase<string>,
  given: PublishedCheck['given'],
  expected: number,
  tolerance: number,
  source: string,
): PublishedCheck => ({ calculation, given, expected, tolerance, source, kind: 'derived' });

const FACTORS =
  'composition of the factor ranges 0.7–1 (hydrogel to adsorptive) and 1.5–2 (xerogel to adsorptive), common practice with no source';

export const costChecks: readonly PublishedCheck[] = [
  ...costMoistureChecks,
  derived(
    'COSTPERHL',
    { dose: 175, price: 0.6 },
    0.105,
    1e-12,
    'by hand from published use (175 g/hL, ask-eu.de 7398) and price (600 EUR/t, German radio report on spent powder)',
  ),
  derived(
    'POWDERPERHL',
    { precoat: 40, feed: 90, run: 2104 },
    109.011_407,
    1e-8,
    'by hand: 90 g/hL and 40 kg over 2104 hL',
  ),
  {
    calculation: 'LANDEDPRICE',
    given: { packPrice: 3750, packMass: 1, discount: 0.1, duty: 0.2 },
    expected: 4050,
    tolerance: 1e-12,
    source:
      'Premier Training, bookkeeping course, chapter 2: an invoice of 3750 less 10 % trade discount, then 20 % on the rest (there a sales tax)',
    kind: 'published',
  },
  {
    calculation: 'SPENTCAKE',
    given: { dryPowder: 2000, dryMatter: 0.4 },
    expected: 5000,
    tolerance: 1e-12,
    source: 'wastewatertreatment-system.com, amount of dewatered sludge: 2 t of dry sludge at 60 % moisture are 5 t',
    kind: 'published',
  },
  derived(
    'SPENTCAKE',
    { dryPowder: 39.8 + 0.110_55 * 2104, dryMatter: 0.25, beerSolids: 0.025 * 2104 },
    0.618 * 2104,
    printed(0.618, 3),
    'the invented plan: 0.618 kg of wet cake a hL over 2104 hL, reckoned apart from this code',
  ),
  derived(
    'DISPOSALCOST',
    { wetCake: 65_000, price: 70, load: 10, haul: 150 },
    5600,
    1e-12,
    'by hand: 65 × 70 + 7 × 150',
  ),
  derived(
    'YEARPOWDER',
    { volume: 500_000, dose: 175 },
    87.5,
    1e-12,
    'by hand from published use (175 g/hL, ask-eu.de 7398)',
  ),
  derived('RUNSPERYEAR', { volume: 500_000, run: 2104 }, 237.642_586, 1e-8, 'by hand'),
  derived(
    'BREAKEVENPRICE',
    { presentCost: 0.144, otherCost: 0, dose: 51 },
    2.823_529,
    printed(2.823_529, 6),
    'by hand: 0.060 kg of gel at 2.40 against 0.051 kg of its swap',
  ),
  ...(
    [
      ['hydrogel', 'adsorptive', 42],
      ['xerogel', 'adsorptive', 90],
      ['hydrogel', 'xerogel', 21],
    ] as const
  ).map(([fromKind, toKind, low]) =>
    derived('SWAPRANGE', { dose: 60, fromKind, toKind }, low, 1e-9, `low end of ${FACTORS}`),
  ),
];
