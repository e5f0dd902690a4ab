import { type PublishedCheck, printed } from './check.js';

const PUMP = 'dosing pump by hand: 250 hL/h, 90 g/hL, 150 g/L';
const SLURRY = 'slurry by hand: 100 kg of powder of 2300 kg/m³ in 1000 L of water';
const WATER_RULES = 'drinking-water rules of Minnesota, 4720.3950: precoat of 0.1 lb/ft², 1/16 inch deep';
const PULP =
  'B. A. Wills and T. J. Napier-Munn, Mineral Processing Technology, 7th edition, 2006, Example 3.1: pulp of 1400 kg/m³ with quartz of 2650 is 45.9 % solids; 1 L in 7 s carries 330.5 kg/h';
/** L/h of that pulp. */
const PULP_FLOW = 3600 / 7;
const EXACT = 1e-12;

export const feedChecks: readonly PublishedCheck[] = [
  {
    calculation: 'BODYFEED',
    given: { flow: 250, dose: 90 },
    expected: 22.5,
    tolerance: EXACT,
    source: PUMP,
    kind: 'derived',
  },
  {
    calculation: 'PUMPRATE',
    given: { flow: 250, dose: 90, strength: 150 },
    expected: 150,
    tolerance: EXACT,
    source: PUMP,
    kind: 'derived',
  },
  {
    calculation: 'DOSEMADE',
    given: { pump: 150, strength: 150, flow: 250 },
    expected: 90,
    tolerance: EXACT,
    source: PUMP,
    kind: 'derived',
  },
  {
    calculation: 'CHARGEHOURS',
    given: { tank: 1050, pump: 150 },
    expected: 7,
    tolerance: EXACT,
    source: PUMP,
    kind: 'derived',
  },
  {
    calculation: 'SLURRYSTRENGTH',
    given: { powder: 100, water: 1000, density: 2300 },
    expected: 95.8333,
    tolerance: 1e-6,
    source: `${SLURRY}: not 100 g/L`,
    kind: 'derived',
  },
  {
    calculation: 'SLURRYWATER',
    given: { powder: 100, strength: 95.833_333_333_333, density: 2300 },
    expected: 1000,
    tolerance: 1e-9,
    source: SLURRY,
    kind: 'derived',
  },
  {
    calculation: 'SLURRYSTRENGTH',
    given: { powder: 45.9, water: 54.1, density: 2650 },
    expected: (330.5 * 1000) / PULP_FLOW,
    tolerance: printed(45.9, 1),
    source: PULP,
    kind: 'published',
  },
  {
    calculation: 'SLURRYWATER',
    given: { powder: 330.5, strength: 0.459 * 1400, density: 2650 },
    expected: (330.5 * 54.1) / 45.9,
    tolerance: 2 * printed(45.9, 1),
    source: `${PULP}; the water beside them`,
    kind: 'derived',
  },
  {
    calculation: 'PRECOATMASS',
    given: { area: 0.092_903_04, load: 488.2427636 },
    expected: 0.045_359_237,
    tolerance: 1e-9,
    source: `${WATER_RULES}: 1 ft² takes 0.1 lb`,
    kind: 'published',
  },
  {
    calculation: 'CAKELOAD',
    given: { depth: 1.5875, density: 307.55 },
    expected: 0.48824,
    tolerance: 2e-5,
    source: `${WATER_RULES}: a cake of 307.55 kg/m³`,
    kind: 'derived',
  },
  {
    calculation: 'CAKEDEPTH',
    given: { load: 0.48824, density: 307.55 },
    expected: 1.5875,
    tolerance: 2e-5,
    source: `${WATER_RULES}: a cake of 307.55 kg/m³`,
    kind: 'derived',
  },
  {
    calculation: 'CAKEDEPTH',
    given: { load: 1, density: 300 },
    expected: 3.33333,
    tolerance: 2e-6,
    source: 'precoat by hand: 1 kg/m² at 300 kg/m³',
    kind: 'derived',
  },
  {
    calculation: 'CAKEDEPTH',
    given: { load: 1 + 0.1 * 5 * 10, density: 300 },
    expected: 20,
    tolerance: EXACT,
    source: 'cake space by hand: 1 kg/m² and 10 h of 100 g/hL at 5 hL/(m² h) fill 20 mm at 300 kg/m³',
    kind: 'derived',
  },
  {
    calculation: 'CAKEDEPTH',
    given: { load: 9, density: 300, radius: 20 },
    expected: 20,
    tolerance: EXACT,
    source:
      'geometry by hand: a ring from 20 to 40 mm holds 0.0012π m³ per m, on 0.04π m² of septum 9 kg/m² at 300 kg/m³',
    kind: 'derived',
  },
  {
    calculation: 'CAKELOAD',
    given: { depth: 20, density: 300, radius: 20 },
    expected: 9,
    tolerance: EXACT,
    source:
      'geometry by hand: a ring from 20 to 40 mm holds 0.0012π m³ per m, on 0.04π m² of septum 9 kg/m² at 300 kg/m³',
    kind: 'derived',
  },
  {
    calculation: 'SOLIDSLOAD',
    given: { cells: 2 },
    expected: 6,
    tolerance: EXACT,
    source: 'by hand: 2 million cells per mL of 30 pg',
    kind: 'derived',
  },
  {
    calculation: 'CAKESOLIDS',
    given: { feed: 90, stabiliser: 60, stabiliserMoisture: 0.65, beerSolids: 25, removed: 0, aidMoisture: 0.005 },
    expected: 135.55,
    tolerance: EXACT,
    source: 'by hand: 90 × 0.995 + 60 × 0.35 + 25',
    kind: 'derived',
  },
  {
    calculation: 'CAKESOLIDS',
    given: { feed: 60, stabiliser: 51, stabiliserMoisture: 0.01, beerSolids: 25, removed: 0.5, aidMoisture: 0.005 },
    expected: 109.945,
    tolerance: EXACT,
    source: 'by hand: 60 × 0.995 + 0.5 × 51 × 0.99 + 25',
    kind: 'derived',
  },
  {
    calculation: 'FEEDAFTERSWAP',
    given: { feed: 90, stabiliser: 51, credit: 0.8 },
    expected: 49.2,
    tolerance: EXACT,
    source: 'by hand: 90 − 0.8 × 51',
    kind: 'derived',
  },
];
