import { type PublishedCheck, printed } from './check.js';

const SHRINK = 'agricultural extension columns on shrink';

/** Shrink in percent for each point of moisture, by final moisture. */
const SHRINK_PER_POINT: readonly (readonly [moisture: number, shrink: number])[] = [
  [15.5, 1.1834],
  [15, 1.1765],
  [14, 1.1628],
  [13, 1.1494],
  [12, 1.1364],
  [11, 1.1236],
  [10, 1.1111],
];

export const moistureChecks: readonly PublishedCheck[] = [
  {
    calculation: 'DRYMASS',
    given: { mass: 56, moisture: 0.155 },
    expected: 47.32,
    tolerance: 1e-9,
    source: `${SHRINK}: a bushel of 56 lb at 15.5 %`,
    kind: 'published',
  },
  {
    calculation: 'ASISMASS',
    given: { dryMass: 47.32, moisture: 0.155 },
    expected: 56,
    tolerance: 1e-9,
    source: `${SHRINK}: a bushel of 56 lb at 15.5 %`,
    kind: 'published',
  },
  {
    calculation: 'SAMESOLIDS',
    given: { amount: 100, moisture: 0.25, newMoisture: 0.155 },
    expected: 100 - 11.24,
    tolerance: printed(88.76, 2),
    source: `${SHRINK}: 11.24 % shrink from 25 % to 15.5 %`,
    kind: 'published',
  },
  ...SHRINK_PER_POINT.map(
    ([moisture, shrink]): PublishedCheck => ({
      calculation: 'SAMESOLIDS',
      given: { amount: 100, moisture: (moisture + 1) / 100, newMoisture: moisture / 100 },
      expected: 100 - shrink,
      tolerance: printed(100 - shrink, 4),
      source: `${SHRINK}: ${shrink} % shrink a point at ${moisture} % (two decimals printed, two reckoned)`,
      kind: 'derived',
    }),
  ),
  {
    calculation: 'SAMESOLIDS',
    given: { amount: 1, moisture: 0.2, newMoisture: 0.15 },
    expected: 0.941176,
    tolerance: printed(0.941176, 6),
    source: 'exact balance beside the linear 0.94 of a crop-insurance table (20 % to 15 %)',
    kind: 'derived',
  },
  {
    calculation: 'SAMESOLIDS',
    given: { amount: 1, moisture: 0.65, newMoisture: 0.05 },
    expected: 0.368421,
    tolerance: printed(0.368421, 6),
    source: 'equal dry silica of hydrogel (65 %) and xerogel (5 %)',
    kind: 'derived',
  },
  {
    calculation: 'DRYBASIS',
    given: { moisture: 0.65 },
    expected: 1.85714,
    tolerance: printed(1.85714, 5),
    source: 'definition: 65 % on the wet basis is 185.714 % on the dry basis',
    kind: 'derived',
  },
  {
    calculation: 'WETBASIS',
    given: { waterPerDry: 13 / 7 },
    expected: 0.65,
    tolerance: 1e-12,
    source: 'definition: 185.714 % on the dry basis is 65 % on the wet basis',
    kind: 'derived',
  },
  {
    calculation: 'OVENMOISTURE',
    given: { wetSample: 56, drySample: 47.32 },
    expected: 0.155,
    tolerance: 1e-9,
    source: `${SHRINK}: a bushel of 56 lb with 47.32 lb of dry matter`,
    kind: 'published',
  },
];
