import { planCells } from '../plan/sheet.js';
import { type PublishedCheck, printed } from './check.js';

/** Powder dosed into water, its cost and what comes with it: the arithmetic of beer, in the waterworks' units. */
const GALLON = 3.785_411_784;
const POUND = 0.453_592_37;
const EIGHT_POUNDS = { tolerance: 7e-4, wider: 'a gallon at 8.34 lb for 8.3454, a litre of a kilogram' };

const PUMP_50 =
  'calculator.city, How to calculate dosing rate of chemical in ppm: 50 m³/h, 2 mg/L, 144 g/L take 0.694 L/h';
const PUMP_100 = 'aionlinecalculator.com, Chemical dosing calculator: 2 mg/L in 100 m³/h from 120 g/L are 1.67 L/h';

const BOOK = 'Advanced Waterworks Mathematics, 2019a, page 310';
const ALUM = `${BOOK}: 8 MGD at 90 mg/L of 15 % alum for 1.20 a lb, 40,032 lb and 48,038.40 a day; at 65 mg/L 13,344 less`;
const HYPOCHLORITE = `${BOOK}: 0.37 MG at 100 mg/L of 45 % take 685.73 lb`;
const MONOMER =
  'WHO, Guidelines for Drinking-water Quality, 4th edition, chapter 12, acrylamide: 1 mg/L of polymer with 0.05 % of monomer, at most 0.5 µg/L';

/** Millions of gallons in hL, and what a lb costs by the kg. */
const megagallons = (volume: number): number => (volume * 1e6 * GALLON) / 100;
const DAY = megagallons(8);
const PRICE = 1.2 / POUND;

/** Two plans that differ in the stabiliser's dose alone. */
const dosed = (stabiliserDose: number) => planCells({ stabiliserDose, stabiliserPrice: PRICE, yearVolume: DAY });

export const waterworksChecks: readonly PublishedCheck[] = [
  {
    calculation: 'PUMPRATE',
    given: { flow: 500, dose: 0.2, strength: 144 },
    expected: 0.694,
    tolerance: printed(0.694, 3),
    source: PUMP_50,
    kind: 'published',
  },
  {
    calculation: 'PUMPRATE',
    given: { flow: 1000, dose: 0.2, strength: 120 },
    expected: 1.67,
    tolerance: printed(1.67, 2),
    source: PUMP_100,
    kind: 'published',
  },
  {
    calculation: 'DOSEMADE',
    given: { pump: 0.694, strength: 144, flow: 500 },
    expected: 0.2,
    tolerance: printed(0.694, 3),
    source: `${PUMP_50}, solved for the dose`,
    kind: 'derived',
  },
  {
    calculation: 'YEARPOWDER',
    given: { volume: DAY, dose: 9 / 0.15 },
    expected: (40_032 * POUND) / 1000,
    ...EIGHT_POUNDS,
    source: ALUM,
    kind: 'published',
  },
  {
    calculation: 'YEARPOWDER',
    given: { volume: megagallons(0.37), dose: 10 / 0.45 },
    expected: (685.73 * POUND) / 1000,
    ...EIGHT_POUNDS,
    source: HYPOCHLORITE,
    kind: 'published',
  },
  {
    calculation: 'COSTPERHL',
    given: { dose: 9 / 0.15, price: PRICE },
    expected: 48_038.4 / DAY,
    ...EIGHT_POUNDS,
    source: ALUM,
    kind: 'published',
  },
  {
    calculation: 'SAVING',
    // One powder of a plan; the day stands for the year.
    given: {
      labels: {
        labels: dosed(0).labels,
        columns: {
          present: dosed(9 / 0.15).columns.values as readonly number[],
          proposed: dosed(6.5 / 0.15).columns.values as readonly number[],
        },
      },
    },
    row: 'Stabiliser',
    column: 'Saved per year',
    expected: 13_344,
    ...EIGHT_POUNDS,
    source: `${ALUM}; the item of one powder`,
    kind: 'published',
  },
  {
    calculation: 'FILTRATIONCOST',
    given: { labels: dosed(9 / 0.15) },
    row: 'Stabiliser',
    column: 'Per year',
    expected: 48_038.4,
    ...EIGHT_POUNDS,
    source: `${ALUM}; the item of one powder`,
    kind: 'published',
  },
  {
    calculation: 'METALCARRY',
    given: { doses: [0.1], contents: [500] },
    expected: 0.000_5,
    tolerance: 1e-12,
    source: MONOMER,
    kind: 'published',
  },
];
