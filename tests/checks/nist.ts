import { NORRIS } from '../numerics/norris.js';
import type { PublishedCheck } from './check.js';

/** In rising order, as a log is written: the order changes no figure of the line. */
const LOG = [...NORRIS].sort(([, one], [, other]) => one - other);

/** Certified figures of the line; a tenth of the readings, so that they are pressures that a filter may have. */
const CERTIFIED: Readonly<Record<string, number>> = {
  'Start pressure drop bar': -0.262_323_073_774_029 / 10,
  'Rise bar/hL': 1.002_116_818_020_45 / 10,
  'Residual standard deviation bar': 0.884_796_396_144_373 / 10,
  'R²': 0.999_993_745_883_712,
};

export const nistChecks: readonly PublishedCheck[] = Object.entries(CERTIFIED).map(([row, expected]) => ({
  calculation: 'FITRUN',
  given: {
    volumes: LOG.map(([, x]) => x),
    bars: LOG.map(([y]) => y / 10),
    area: 50,
    flow: 250,
    viscosity: 2,
    solids: 100,
  },
  row,
  expected,
  tolerance: 1e-11,
  source: 'NIST Statistical Reference Datasets, linear regression, Norris: certified values, readings divided by 10',
  kind: 'published',
}));
