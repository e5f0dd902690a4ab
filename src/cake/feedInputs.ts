import { beerSolids, bodyFeed, cakeDensity, dose, permeability, septumRadius, viscosity } from '../quantities.js';
import { dryPrecoat } from './fitInputs.js';
import { compressibility, flux } from './inputs.js';
import { isSteady } from './meanRise.js';

const DRY = 'Dry solids in each hL of beer.';

const hours = {
  unit: 'h',
  limit: [0, 10_000],
  usual: [0, 24],
  preset: 0,
  kind: 'number',
  source: 'Usual range: common practice, no source.',
} as const;

/** What FITFEED and FEEDRISE both read; doses here are dry. */
export const feedInputs = {
  dose: {
    ...dose,
    label: 'Body feed, dry',
    usual: [50, 200],
    help: `${DRY} Of body feed as bought, less its moisture.`,
    source: bodyFeed.source,
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
  septumRadius,
  precoatLoad: dryPrecoat,
  until: {
    ...hours,
    label: 'Rise read until',
    help: 'Hours of beer at the last reading of the rise. Needed on a candle, where the rise falls off, and for a compressible cake, where it grows; elsewhere not read.',
  },
  from: {
    ...hours,
    label: 'Rise read from',
    help: 'Hours of beer at the first reading of the rise; 0 (as is a blank cell) from the first beer on.',
  },
  compressibility: {
    ...compressibility,
    help: 'Exponent of the run logs (FITCAKES); the permeabilities are then those at 1 bar. 0 for a rigid cake.',
  },
} as const;

interface Read {
  readonly septumRadius: number;
  readonly compressibility: number;
}

/** Where the rise changes through the run, a rise says nothing without the hours over which it was read. */
export function hoursRefusal(read: Read, from: number, until: number, place = ''): string | undefined {
  if (isSteady(read) || until > from) return undefined;
  const { label } = feedInputs.until;
  if (until === 0)
    return `${label}${place} is needed ${read.septumRadius > 0 ? 'on a candle' : 'for a compressible cake'}, where the rise changes through the run: the hours of beer at the last reading.`;
  return `${label}${place} must lie after ${feedInputs.from.label}.`;
}

export const NO_STABILISER_PERMEABILITY =
  'Stabiliser permeability is needed wherever stabiliser is dosed, but nothing was given.';
