import { planCells } from '../plan/sheet.js';
import type { PublishedCheck } from './check.js';

/**
 * A press that is filled at a constant rate for 180 s, until its pressure difference is 400 kN/m², and then at that pressure.
 * Its cake and its cloth are those of the leaf test in the same example: rμv = 7.13e11 N s/m⁴ and L/v = 3.5e-3 m. With
 * 1 mPa·s for μ and 1 g/L for v, which the example needs only in that product.
 */
const EXAMPLE = 'Coulson and Richardson, Chemical Engineering volume 2, Example 7.1';
const FILLING = `${EXAMPLE}: 0.01825 m³ in the first 180 s, at a constant rate, until 400 kN/m²`;
const ENDING = `${EXAMPLE}: 3.79e-5 m³/s at the end, after 0.0615 m³, at 400 kN/m²`;

const AREA = 2.16;
const PRODUCT = 7.13e11;
const CLOTH = 3.5e-3;
const RESISTANCE = PRODUCT / 1e-3;
const FILLED = 0.018_25;
const HOURS = 180 / 3600;
const LIMIT = 4;
const ROUNDED = 1e-3;
const wider = 'the book’s constants have three digits';

/** m/s, as hL/(m² h). */
const asFlux = (speed: number): number => speed * 36_000;

const pressure = (speed: number, volume: number, source: string): PublishedCheck => ({
  calculation: 'CAKEPRESSURE',
  given: {
    flux: asFlux(speed),
    viscosity: 1,
    load: volume / AREA,
    resistance: RESISTANCE,
    medium: (PRODUCT * CLOTH) / 1e-3,
  },
  expected: LIMIT,
  tolerance: 2 * ROUNDED,
  source,
  kind: 'published',
  wider,
});

const SPEED = FILLED / AREA / 180;
/** The cloth alone, bar. */
const START = (PRODUCT * SPEED * CLOTH) / 1e5;

const CHANGED = {
  area: AREA,
  flow: (FILLED * 10) / HOURS,
  viscosity: 1,
  startPressure: START,
  pressureLimit: LIMIT,
  precoatLoad: 0,
  bodyFeed: 0,
  stabiliserDose: 0,
  beerSolids: 100,
  cakeResistance: RESISTANCE,
  aidPermeability: undefined,
  beerSolidsPermeability: undefined,
  stabiliserPermeability: undefined,
};
const PLAN = planCells(CHANGED);

/** Of a plan that several beers share, without what each of them has of its own. */
const SHARED = planCells({
  ...CHANGED,
  viscosity: undefined,
  beerSolids: undefined,
  bodyFeed: undefined,
  stabiliserDose: undefined,
  yearVolume: undefined,
});

const run = (
  calculation: Uppercase<string>,
  expected: number | string,
  where: Pick<PublishedCheck, 'row' | 'column'> = {},
  given: PublishedCheck['given'] = { labels: PLAN },
): PublishedCheck => ({
  calculation,
  given,
  ...where,
  expected,
  tolerance: typeof expected === 'number' ? ROUNDED : 0,
  source: FILLING,
  kind: 'published',
  ...(typeof expected === 'number' ? { wider } : {}),
});

export const pressChecks: readonly PublishedCheck[] = [
  pressure(SPEED, FILLED, FILLING),
  pressure(3.79e-5 / AREA, 0.0615, ENDING),
  run('RUNLENGTH', 0.1825),
  run('RUNREPORT', 0.1825, { row: 'Run hL' }),
  run('RUNREPORT', HOURS, { row: 'Run time h' }),
  run('RUNREPORT', 'pressure', { row: 'Ends by' }),
  run('RUNCURVE', 0.1825, { row: -1, column: 'Run hL' }),
  run('RUNCURVE', LIMIT, { row: -1, column: 'Pressure drop bar' }),
  run('RUNSTEPS', 0.1825, { row: -1, column: 'Run hL' }, { labels: PLAN, volumes: [0.1, 1] }),
  run('BEERRUN', 0.1825, {}, { labels: SHARED, viscosity: 1, beerSolids: 100, bodyFeed: 0, stabiliserDose: 0 }),
  {
    calculation: 'FEEDRISE',
    // One permeability for all that is filtered: 1 / (resistance × 300 kg/m³), in darcy.
    given: {
      dose: 0,
      aidPermeability: 1 / (RESISTANCE * 300) / 9.869_232_667_160_13e-13,
      beerSolidsPermeability: 1 / (RESISTANCE * 300) / 9.869_232_667_160_13e-13,
      beerSolids: 100,
      flux: asFlux(SPEED),
      viscosity: 1,
      cakeDensity: 300,
    },
    expected: (LIMIT - START) / HOURS,
    tolerance: ROUNDED,
    source: `${FILLING}; less what the cloth takes`,
    kind: 'derived',
    wider,
  },
];
