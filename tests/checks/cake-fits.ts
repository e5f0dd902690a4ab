import { halfStep, type PublishedCheck } from './check.js';

const PSI = 0.068_947_572_931_68;
const MCCABE = 'McCabe, Smith and Harriott, Unit Operations of Chemical Engineering, Example 30.2';
const GEANKOPLIS = 'Geankoplis, Transport Processes and Unit Operations, Example 14.2-1';
const COULSON = 'Coulson and Richardson, Chemical Engineering volume 2, Example 7.1 (a)';
const REFITTED = 'its readings fitted anew by least squares apart from this code, since the book drew its line by eye';

/** psi; seconds at 0.5, 1.0, 1.5 … L; slope and intercept of t/V on V, resistances and R² of the refitted line. */
const RUNS: readonly (readonly [number, readonly number[], number, number, number, number, number])[] = [
  [6.7, [17.3, 41.3, 72, 108.3, 152.1, 201.7], 13_024_952.381, 28_226.8889, 1.119616912e11, 6.4795002e10, 0.9998644532],
  [
    16.2,
    [6.8, 19, 34.6, 53.4, 76, 102, 131.2, 163],
    7_594_727.8912,
    11_037.15986,
    1.578504179e11,
    6.1259866e10,
    0.9951942663,
  ],
  [
    28.2,
    [6.3, 14, 24.2, 37, 51.7, 69, 88.8, 110, 134, 160],
    4_421_964.406,
    9_795.85185,
    1.599863219e11,
    9.4644419e10,
    0.9986012318,
  ],
  [
    36.3,
    [5, 11.5, 19.8, 30.1, 42.5, 56.8, 73, 91.2, 111, 133, 156.8, 182.5],
    3_768_337.7229,
    7_713.97744,
    1.754991212e11,
    9.5937563e10,
    0.9994626461,
  ],
  [
    49.1,
    [4.4, 9.5, 16.3, 24.6, 34.7, 46.1, 59, 73.6, 89.4, 107.3],
    2_900_987.013,
    6752,
    1.827451164e11,
    1.1358412e11,
    0.9967072347,
  ],
];

const mccabe = ([psi, seconds, slope, intercept, resistance, medium, rSquared]: (typeof RUNS)[number]) => {
  const given = {
    seconds,
    litres: seconds.map((_, row) => 0.5 * (row + 1)),
    area: 0.044,
    pressure: psi * PSI,
    viscosity: 0.885458,
    solids: 23.5,
  };
  const rows = {
    'Slope s/m⁶': slope,
    'Intercept s/m³': intercept,
    'Cake resistance m/kg': resistance,
    'Medium resistance 1/m': medium,
    'R²': rSquared,
  };
  return Object.entries(rows).map(
    ([row, expected]): PublishedCheck => ({
      calculation: 'FITLEAF',
      given,
      row,
      expected,
      tolerance: 2e-7,
      source: `${MCCABE}, run at ${psi} psi; ${REFITTED}`,
      kind: 'derived',
    }),
  );
};

const geankoplis = (first: number, rows: Readonly<Record<string, number>>): PublishedCheck[] =>
  Object.entries(rows).map(([row, expected]) => ({
    calculation: 'FITLEAF',
    given: {
      seconds: [4.4, 9.5, 16.3, 24.6, 34.7, 46.1, 59, 73.6, 89.4, 107.3].slice(first),
      litres: [0.498, 1, 1.501, 2, 2.498, 3.002, 3.506, 4.004, 4.502, 5.009].slice(first),
      area: 0.0439,
      pressure: 3.38,
      viscosity: 0.8937,
      solids: 23.47,
    },
    row,
    expected,
    tolerance: halfStep(expected),
    source:
      first === 0 ? `${GEANKOPLIS}; ${REFITTED}` : `${GEANKOPLIS}, as the book’s line leaves the first point aside`,
    kind: 'derived',
  }));

/** The book's rμv = 7.13e11 and L/v = 3.5e-3 m, with 1 mPa·s and 1 g/L put in for μ and v. */
const coulson = (row: string, expected: number): PublishedCheck => ({
  calculation: 'FITLEAF',
  given: { seconds: [300, 600], litres: [0.25, 0.4], area: 0.05, pressure: 0.713, viscosity: 1, solids: 1 },
  row,
  expected,
  tolerance: 1e-6,
  source: COULSON,
  kind: 'published',
});

/** Book's slopes, s/ft⁶, at its pressures, lbf/ft²: resistance goes as their product. */
const BOOK_SLOPES: readonly (readonly [number, number])[] = [
  [965, 10_440],
  [2330, 5800],
  [4060, 3620],
  [5230, 3060],
  [7070, 2400],
];

const compression = (
  pressures: readonly number[],
  resistances: readonly number[],
  rows: Readonly<Record<string, readonly [number, number]>>,
  how: string,
): PublishedCheck[] =>
  Object.entries(rows).map(([row, [expected, tolerance]]) => ({
    calculation: 'FITCOMPRESSION',
    given: { pressures, resistances },
    row,
    expected,
    tolerance,
    source: `${MCCABE}, five runs; ${how}`,
    kind: 'derived',
  }));

/** The book's answers to its problem on the run at 46.2 kN/m², from a line drawn by eye. */
const PROBLEM: readonly PublishedCheck[] = (
  [
    ['Cake resistance m/kg', 1.106e11],
    ['Medium resistance 1/m', 6.4e10],
  ] as const
).map(([row, expected]) => ({
  calculation: 'FITLEAF',
  given: {
    seconds: [17.3, 41.3, 72, 108.3, 152, 201.7],
    litres: [0.5, 1, 1.5, 2, 2.5, 3],
    area: 0.0439,
    pressure: 0.462,
    viscosity: 0.8937,
    solids: 23.47,
  },
  row,
  expected,
  tolerance: 0.02,
  source: 'Geankoplis, Transport Processes and Unit Operations, Problem 14.2-1',
  kind: 'published',
  wider: 'the book drew its line by eye',
}));

export const cakeFitChecks: readonly PublishedCheck[] = [
  ...PROBLEM,
  ...RUNS.flatMap(mccabe),
  ...geankoplis(0, {
    'Slope s/m⁶': 2.884956e6,
    'Intercept s/m³': 6783.75,
    'Cake resistance m/kg': 1.79188e11,
    'Medium resistance 1/m': 1.12631e11,
  }),
  ...geankoplis(1, { 'Slope s/m⁶': 2.98724e6, 'Intercept s/m³': 6408.3 }),
  coulson('Cake resistance m/kg', 7.13e11 / 1e-3),
  coulson('Medium resistance 1/m', (7.13e11 * 3.5e-3) / 1e-3),
  ...compression(
    RUNS.map(([psi]) => psi * PSI),
    RUNS.map((run) => run[4]),
    {
      'Resistance at 1 bar m/kg': [1.404411371e11, 1e-8],
      Exponent: [0.23675692, 1e-7],
      'Exponent, standard error': [0.0395356011, 1e-7],
      'R²': [0.9228028107, 1e-7],
    },
    'resistances of the refitted lines, logarithms fitted apart from this code',
  ),
  ...compression(
    BOOK_SLOPES.map(([pressure]) => pressure * 47.880_258_98e-5),
    BOOK_SLOPES.map(([pressure, slope]) => pressure * slope * 1e4),
    { Exponent: [0.26, 0.02] },
    'resistances of the lines that the book drew; it gives the exponent 0.26',
  ),
];
