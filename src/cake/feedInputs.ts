import { beerSolids, cakeDensity, dose, permeability, viscosity } from '../quantities.js';
import { flux } from './inputs.js';

const DRY = 'Dry solids in each hL of beer.';

/** What FITFEED and FEEDRISE both read; doses here are dry. */
export const feedInputs = {
  dose: {
    ...dose,
    label: 'Body feed, dry',
    usual: [50, 200],
    help: `${DRY} Of body feed as bought, less its moisture.`,
  },
  flux,
  viscosity,
  beerSolids: { ...beerSolids, label: 'Beer solids, dry', limit: [0.5, 5000] },
  cakeDensity,
  stabiliser: {
    ...dose,
    label: 'Stabiliser, dry',
    usual: [0, 100],
    preset: 0,
    help: `${DRY} What reaches the filter of the stabiliser, less its moisture.`,
  },
  stabiliserPermeability: {
    ...permeability,
    label: 'Stabiliser permeability',
    optional: true,
    help: 'Of the stabiliser in the cake (PARTPERMEABILITY); needed wherever stabiliser is dosed.',
  },
} as const;

export const NO_STABILISER_PERMEABILITY =
  'Stabiliser permeability is needed wherever stabiliser is dosed, but nothing was given.';
