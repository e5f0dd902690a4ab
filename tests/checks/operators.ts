import { type PublishedCheck, printed } from './check.js';

/** Published cases of other trades that are the same balance: drying, water treatment, import. */
const GALLON = 3.785_411_784;
const POUND = 0.453_592_37;

const BASES = 'd.calculator.city, Dry basis calculator, comparison table of moistures on wet and dry basis';
const TABLE = [
  [0.1, 11.1],
  [0.2, 25],
  [0.3, 42.9],
  [0.5, 100],
] as const;

const DETENTION =
  'water-chemistry.in, How to calculate detention time: 157,080 gallons at 300 gallons a minute, 524 minutes';
const BASIN = 'calculatorfriend.com, Detention time calculator: 5000 L at 100 L a minute, 50 minutes';
const DOSAGE = 'voltexam.com, Water treatment math: 3 MGD at 2.5 mg/L take 62.55 lb a day, a gallon at 8.34 lb';
const CUSTOMS =
  'dhl.com, UK import tax and duty: 2000 pieces for 10,000, freight and insurance 500, duty of 4 % on both, 10,920 in all';
const CELLS =
  'Van den Berg and Van Landschoot, Cerevisia 28 (2003) 25, table 1, as quoted by brewers’ pages: 8 to 18 billion cells in a gram of dried yeast';

/** Millions of gallons a day in hL/h. */
const fromMgd = (flow: number): number => (flow * 1e6 * GALLON) / 100 / 24;

export const operatorChecks: readonly PublishedCheck[] = [
  ...TABLE.flatMap(([moisture, percent]): PublishedCheck[] => [
    {
      calculation: 'DRYBASIS',
      given: { moisture },
      expected: percent / 100,
      tolerance: printed(percent, 1),
      source: BASES,
      kind: 'published',
    },
  ]),
  {
    calculation: 'WETBASIS',
    given: { waterPerDry: 0.25 },
    expected: 0.2,
    tolerance: 1e-9,
    source: BASES,
    kind: 'published',
  },
  {
    calculation: 'WETBASIS',
    given: { waterPerDry: 1 },
    expected: 0.5,
    tolerance: 1e-9,
    source: BASES,
    kind: 'published',
  },
  {
    calculation: 'CONTACTTIME',
    given: { tank: (157_080 * GALLON) / 100, flow: (300 * GALLON * 60) / 100 },
    expected: 524,
    tolerance: printed(524, 0),
    source: DETENTION,
    kind: 'published',
  },
  {
    calculation: 'CONTACTTANK',
    given: { flow: 60, contact: 50 },
    expected: 50,
    tolerance: 1e-9,
    source: `${BASIN}, solved for the tank`,
    kind: 'derived',
  },
  {
    calculation: 'BODYFEED',
    given: { flow: fromMgd(3), dose: 0.25 },
    expected: (62.55 * POUND) / 24,
    tolerance: 7e-4,
    wider: 'a gallon at 8.34 lb for 8.3454, a litre of a kilogram',
    source: DOSAGE,
    kind: 'published',
  },
  {
    calculation: 'LANDEDPRICE',
    given: {
      packPrice: 10_000,
      packMass: 2000,
      freight: 0.25,
      discount: 0,
      duty: 0.04,
      loss: 0,
      dutyOn: 'goods and freight',
    },
    expected: 10_920 / 2000,
    tolerance: 1e-9,
    source: CUSTOMS,
    kind: 'published',
  },
  ...[8, 18].map(
    (billions): PublishedCheck => ({
      calculation: 'SOLIDSLOAD',
      // As many millions in a mL as the gram has in billions: a gram in a litre.
      given: { cells: billions, cellMass: 1000 / billions, other: 0 },
      expected: 100,
      tolerance: 1e-9,
      source: CELLS,
      kind: 'derived',
    }),
  ),
];
