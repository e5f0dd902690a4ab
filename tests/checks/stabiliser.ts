import { type PublishedCheck, printed } from './check.js';

const Q10 =
  'C. W. Bamforth and A. Lentini in Beer: A Quality Perspective, 2009 (chapter’s authors from memory), pages 85–109: 2 weeks at 30 °C equal 4, 8 and 16 weeks at 20, 10 and 0 °C';
const EU = 'Regulation (EU) No 1169/2011, Annex II, point 12: above 10 mg/L';
const US = '27 CFR 7.63(b)(3): at or above 10 ppm';
const WINE =
  'thevintnervault.com, SO₂ additions: potassium metabisulphite of 57 % SO₂, 2.4 mL of a 10 % solution in an imperial gallon are 30 mg/L, 6.7 mL in 19.2 L are 20';
const FACTORS = 'common practice, no source: hydrogel to adsorptive 0.7–1, xerogel to adsorptive 1.5–2';

/**
 * Heights in feet of loblolly pines of seed lot 329 by age in years (Kung 1986), a textbook case of this curve.
 * They rise, hazes fall: mirrored at 100, plateau and start are 100 less the published ones, and all else is alike.
 */
const AGES = [3, 5, 10, 15, 20, 25];
const HEIGHTS = [3.93, 9.34, 26.08, 37.79, 48.31, 56.43];
const PINES: Pick<PublishedCheck, 'calculation' | 'given' | 'source' | 'kind'> = {
  calculation: 'LADDERFIT',
  given: { doses: AGES, hazes: HEIGHTS.map((height) => 100 - height) },
  source:
    'R documentation, example of SSasymp on seed lot 329 of the Loblolly data: Asym 94.1282 (8.4030), R0 −8.2508 (1.2261), lrc −3.2176 (0.1386), residual standard error 0.7493',
  kind: 'from memory',
};
const RATE = Math.exp(-3.2176);

export const stabiliserChecks: readonly PublishedCheck[] = [
  { ...PINES, row: 'Plateau EBC', expected: 100 - 94.1282, tolerance: printed(100 - 94.1282, 4) },
  { ...PINES, row: 'Haze without dose EBC', expected: 108.2508, tolerance: printed(108.2508, 4) },
  // The published rate is a logarithm: its last digit is passed on to the rate.
  { ...PINES, row: 'Rate per g/hL', expected: RATE, tolerance: 5e-5 },
  { ...PINES, row: 'Residual EBC', expected: 0.7493, tolerance: printed(0.7493, 4) },
  ...[
    [20, 28],
    [10, 56],
    [0, 112],
  ].map(
    ([newTemperature, expected]): PublishedCheck => ({
      calculation: 'STORAGELIFE',
      given: { days: 14, temperature: 30, newTemperature },
      expected: expected as number,
      tolerance: 1e-12,
      source: Q10,
      kind: 'published',
    }),
  ),
  {
    calculation: 'WARMDAYLIFE',
    given: { warmDays: 4, factor: 30 },
    expected: 120,
    tolerance: 1e-12,
    source: 'MEBAK, B-420-02-900: haze-free life is warm days times the beer’s own factor',
    kind: 'derived',
  },
  ...(
    [
      ['EU', 10, 'none', EU],
      ['EU', 10.1, 'declare', EU],
      ['US', 10, 'declare', US],
      ['US', 9.9, 'none', US],
    ] as const
  ).map(
    ([rule, total, expected, source]): PublishedCheck => ({
      calculation: 'SULPHITELABEL',
      given: { total, rule },
      expected,
      tolerance: 0,
      source,
      kind: 'published',
    }),
  ),
  {
    calculation: 'SULPHITECARRY',
    given: { dose: 100, content: 1000 },
    expected: 1,
    tolerance: 1e-12,
    source: 'by hand: 1 g of powder in a litre with 1 mg of SO₂ in a g',
    kind: 'derived',
  },
  ...(
    [
      [2.4, 4.546_09, 30],
      [6.7, 19.2, 20],
    ] as const
  ).map(
    ([millilitres, litres, expected]): PublishedCheck => ({
      calculation: 'SULPHITECARRY',
      given: { dose: (millilitres * 0.1 * 100) / litres, content: 570_000 },
      expected,
      tolerance: printed(expected, 0),
      source: WINE,
      kind: 'published',
    }),
  ),
  {
    calculation: 'METALCARRY',
    given: { doses: [150], contents: [10] },
    expected: 0.015,
    tolerance: 1e-12,
    source: 'by hand: average diatomite use of 150 g/hL at the USP-NF bound of 10 ppm of leachable lead',
    kind: 'derived',
  },
  {
    calculation: 'SWAPDOSE',
    given: { dose: 100, fromKind: 'hydrogel', toKind: 'xerogel', position: 0.5 },
    expected: 48.57,
    tolerance: printed(48.57, 2),
    source: `${FACTORS}: 0.85 / 1.75`,
    kind: 'derived',
  },
  {
    calculation: 'SWAPDOSE',
    given: { dose: 100, fromKind: 'hydrogel', toKind: 'xerogel', position: 0 },
    expected: 35,
    tolerance: 1e-12,
    source: `${FACTORS}: 0.7 / 2`,
    kind: 'derived',
  },
  {
    calculation: 'CONTACTTANK',
    given: { flow: 240, contact: 5 },
    expected: 20,
    tolerance: 1e-12,
    source: 'by hand: the 5 min that MBAA Technical Quarterly 1979, tq79ab06, gives a gel, at 4 hL/min',
    kind: 'derived',
  },
  {
    calculation: 'CONTACTTIME',
    given: { tank: 20, flow: 240 },
    expected: 5,
    tolerance: 1e-12,
    source: 'by hand: 20 hL at 4 hL/min',
    kind: 'derived',
  },
];
