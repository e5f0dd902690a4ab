import { type PublishedCheck, printed } from './check.js';

const SR6 = 'IAPWS SR6-08, table of check values';
const KORSON = 'Korson, Drost-Hansen and Millero 1969, table of viscosities';
const PERRY = 'Perry’s Chemical Engineers’ Handbook, 9th edition, Table 2-135 (saturated water)';
const CIPM =
  'density of air-free water recommended by the CIPM, Tanaka et al., Metrologia 38 (2001) 301, reckoned from its formula';

/** °C, mPa·s as printed, decimals. */
const KORSON_TABLE: readonly (readonly [number, number])[] = [
  [0, 1.7916],
  [5, 1.5192],
  [10, 1.3069],
  [15, 1.1382],
  [20, 1.002],
  [25, 0.8903],
  [30, 0.7975],
];

/** K, µPa·s as printed. */
const PERRY_TABLE: readonly (readonly [number, number])[] = [
  [280, 1433.7],
  [290, 1084.0],
  [300, 853.84],
  [310, 693.54],
  [320, 577.02],
  [330, 489.49],
  [340, 421.97],
  [350, 368.77],
  [360, 326.1],
  [370, 291.36],
];

/** °C, mPa·s and kg/m³ by SR6-08, kg/m³ by CIPM 2001, each worked out apart from this code. */
const WATER: readonly (readonly [number, number, number, number])[] = [
  [0, 1.7918, 999.8424, 999.8428],
  [2, 1.6735, 999.9423, 999.9429],
  [4, 1.5673, 999.9742, 999.9749],
  [5, 1.5182, 999.966, 999.9668],
  [8, 1.3847, 999.8504, 999.8513],
  [10, 1.3059, 999.7019, 999.7027],
  [15, 1.1375, 999.102, 999.1026],
  [20, 1.0016, 998.2065, 998.2067],
  [25, 0.89, 997.047, 997.047],
  [30, 0.7972, 995.6488, 995.6488],
];

const viscosity = (
  temperature: number,
  expected: number,
  tolerance: number,
  source: string,
  kind: PublishedCheck['kind'],
  wider?: string,
): PublishedCheck => ({
  calculation: 'WATERVISCOSITY',
  given: { temperature },
  expected,
  tolerance,
  source,
  kind,
  ...(wider === undefined ? {} : { wider }),
});

const density = (
  temperature: number,
  expected: number,
  tolerance: number,
  source: string,
  kind: PublishedCheck['kind'],
  wider?: string,
): PublishedCheck => ({
  ...viscosity(temperature, expected, tolerance, source, kind, wider),
  calculation: 'WATERDENSITY',
});

const OTHER = 'another equation of water';
const ETHANOL = 'Bingham and Jackson, viscosity of ethanol–water mixtures: its own 20 °C figure comes back at 20 °C';
const PRECOAT = 'precoat by hand: 1 kg/m² at 300 kg/m³ and 1 darcy, 5 hL/(m² h) of 2.0 mPa·s, 938.194 Pa';

export const cakeWaterChecks: readonly PublishedCheck[] = [
  viscosity(25, 0.889_996_774, 1e-9, SR6, 'published'),
  density(25, 997.047013, 1e-9, SR6, 'published'),
  ...KORSON_TABLE.map(([t, eta]) => viscosity(t, eta, 8e-4, KORSON, 'published', OTHER)),
  ...PERRY_TABLE.map(([kelvin, eta]) => viscosity(kelvin - 273.15, eta / 1000, 1e-3, PERRY, 'published', OTHER)),
  ...WATER.flatMap(([t, eta, sr6, cipm]) => [
    viscosity(t, eta, printed(eta, 4), SR6, 'derived'),
    density(t, sr6, printed(sr6, 4), SR6, 'derived'),
    density(t, cipm, 1e-6, CIPM, 'derived', OTHER),
  ]),
  {
    calculation: 'BEERVISCOSITY',
    given: { temperature: 20, viscosityAt20: 1.538 },
    expected: 1.538,
    tolerance: 1e-12,
    source: ETHANOL,
    kind: 'derived',
  },
  {
    calculation: 'BEERVISCOSITY',
    given: { temperature: 0, viscosityAt20: 1.0016 },
    expected: 1.7918,
    tolerance: 1e-4,
    source: `${SR6}: water itself`,
    kind: 'derived',
    wider: 'both ends of the ratio are rounded',
  },
  {
    calculation: 'CAKERESISTANCE',
    given: { permeability: 1, density: 300 },
    expected: 3.3775e9,
    tolerance: 1e-9,
    source: 'by hand: 1 / (1 darcy × 300 kg/m³)',
    kind: 'derived',
  },
  {
    calculation: 'CAKEPERMEABILITY',
    given: { resistance: 3.3775e9, density: 300 },
    expected: 1,
    tolerance: 1e-9,
    source: 'by hand: 1 / (1 darcy × 300 kg/m³)',
    kind: 'derived',
  },
  ...[
    [0.2, 0.02345],
    [0.3, 0.01564],
    [0.4, 0.01173],
  ].map(
    ([rise, darcy]): PublishedCheck => ({
      calculation: 'CAKEPERMEABILITY',
      // Resistance behind a rise at 5 hL/(m² h), 2.0 mPa·s and 100 g/hL: slope / (viscosity × flux² × solids).
      given: { resistance: ((rise as number) * 1e5) / 3600 / (2e-3 * (0.5 / 3600) ** 2 * 1), density: 300 },
      expected: darcy as number,
      tolerance: 4e-4,
      source: `by hand: a rise of ${rise} bar/h at 5 hL/(m² h), 2.0 mPa·s, 100 g/hL and 300 kg/m³`,
      kind: 'derived',
    }),
  ),
  {
    calculation: 'TESTPERMEABILITY',
    given: { filtrate: 1, time: 1, area: 1, depth: 10, pressure: 1.01325, viscosity: 1 },
    expected: 1,
    tolerance: 1e-12,
    source: 'definition of the darcy: 1 cm³/s of 1 mPa·s through 1 cm² and 1 cm at 1 atm',
    kind: 'published',
  },
  {
    calculation: 'TESTPERMEABILITY',
    given: { filtrate: 500_000, time: 3600, area: 10_000, depth: 10 / 3, pressure: 0.009_381_94, viscosity: 2 },
    expected: 1,
    tolerance: 1e-6,
    source: PRECOAT,
    kind: 'derived',
  },
  {
    calculation: 'TESTPERMEABILITY',
    given: { filtrate: 0.5, time: 1, area: 3, depth: 40, pressure: 2 * 1.01325, viscosity: 1 },
    expected: 0.333,
    tolerance: printed(0.333, 3),
    source: 'Ahmed, Reservoir Engineering Handbook, chapter on rock properties: core of 4 cm and 3 cm² at 2 atm',
    kind: 'from memory',
  },
];
