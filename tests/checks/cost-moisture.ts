import { type PublishedCheck, printed } from './check.js';

const FORAGE =
  'Alberta Agriculture, frequently asked questions on pricing forages, silage at 30 a ton and 65 % moisture';
const WET_FORAGES =
  'University of California, Higginbotham, Buying or selling wet forages: 40 a ton at 30 % dry matter';
const CHIPS = 'trade-marine.com, Bone dry metric ton explained: green wood chips';
const SILAGE = 'beefconsultant.com, Calculating the value of silage based on moisture content: 70 a ton at 65 %';
const AIR_DRY = 'Air-dry tonne of pulp, 900 kg of dry fibre to the tonne (temap.com, Air dry calculators)';

/** What a seller by dry matter bills for one ton, as the ton's agreed price less the credit. */
const billed = (
  price: number,
  agreedMoisture: number,
  foundMoisture: number,
  expected: number,
  tolerance: number,
  source: string,
): PublishedCheck => ({
  calculation: 'MOISTURECREDIT',
  given: { mass: 1, price, agreedMoisture, foundMoisture },
  expected: price - expected,
  tolerance,
  source,
  kind: 'published',
});

const dryPrice = (
  price: number,
  moisture: number,
  expected: number,
  tolerance: number,
  source: string,
): PublishedCheck => ({
  calculation: 'DRYPRICE',
  given: { price, moisture },
  expected,
  tolerance,
  source,
  kind: 'published',
});

export const costMoistureChecks: readonly PublishedCheck[] = [
  billed(30, 0.65, 0.55, 38.57, printed(8.57, 2), FORAGE),
  billed(40, 0.7, 0.73, 36, 1e-9, WET_FORAGES),
  billed(40, 0.7, 0.67, 44, 1e-9, WET_FORAGES),
  billed(70, 0.65, 0.68, 64, 1e-9, SILAGE),
  billed(60, 0.4, 0.2, 80, 1e-9, `${CHIPS} at 60 and 40 %`),
  billed(60, 0.4, 0.3, 70, 1e-9, `${CHIPS} at 60 and 40 %`),
  {
    calculation: 'MOISTURECREDIT',
    given: { mass: 20_000, price: 0.8, agreedMoisture: 0.1, foundMoisture: 0.14 },
    // By hand: 20 t at 86 % dry are 17.2 t of fibre, 19.111 air-dry tonnes; 0.889 t short at 800.
    expected: (20 - 17.2 / 0.9) * 800,
    tolerance: 1e-9,
    source: `${AIR_DRY}; 20 t of 86 % at 800 an air-dry tonne, by hand`,
    kind: 'derived',
  },
  dryPrice(60, 0.4, 100, 1e-9, CHIPS),
  dryPrice(80, 0.2, 100, 1e-9, CHIPS),
  dryPrice(70, 0.3, 100, 1e-9, CHIPS),
  dryPrice(90 / 2000, 0.1, 0.05, 1e-9, 'NDSU Extension, What value for standing corn crop silage?: hay at 90 a ton'),
  dryPrice(5.5 / 56, 0.13, 0.1129, printed(0.1129, 4), 'NDSU Extension, same: corn at 5.50 a bushel of 56 lb'),
  dryPrice(180 / 2000, 0.16, 0.1071, printed(0.1071, 4), 'beefconsultant.com, dry forage against silage: hay at 180'),
  dryPrice(110, 0.15, 129.41, printed(129.41, 2), 'Nebraska Extension (tsenews.net), hay at 110 a ton'),
];
