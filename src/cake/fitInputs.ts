import { area, cakeDensity, flow, precoatLoad, septumRadius, viscosity } from '../quantities.js';

const SLIPS = 'The limits only keep out slips of the keyboard; the figure is your own.';

/** Readings of a gauge; a little below 0 where its zero is off. */
export const pressureLog = {
  kind: 'series',
  label: 'Pressure drops',
  unit: 'bar',
  limit: [-1, 100],
  usual: [0, 8],
  help: 'Inlet less outlet, row by row.',
  source: 'Limits: a gauge that reads further below 0 is broken. Usual range: common practice, no source.',
} as const;

export const volumeLog = {
  kind: 'series',
  label: 'Volumes',
  unit: 'hL',
  limit: [0, 1e6],
  help: 'Beer filtered since the run began, row by row, in any order.',
  source: SLIPS,
} as const;

const solidsToCake = {
  kind: 'number',
  label: 'Solids to the cake',
  unit: 'g/hL',
  limit: [0.5, 20_000],
  usual: [50, 300],
  help: 'Dry solids that each hL lays on the cake: CAKESOLIDS reckons them.',
  source: 'Usual range derived from body feeds of 50–200 g/hL with what stabiliser and beer add.',
} as const;

export const dryPrecoat = {
  ...precoatLoad,
  preset: 0,
  help: 'On each m² of septum before the run, dry; it matters on a round septum only.',
} as const;

/** Needed with a septum radius only. */
export const optionalDensity = {
  ...cakeDensity,
  optional: true,
  help: `${cakeDensity.help} Needed with a septum radius, and only there.`,
} as const;

/** The septum on which a logged cake grows. */
export const onSeptum = { septumRadius, cakeDensity: optionalDensity, precoatLoad: dryPrecoat } as const;

/** The log of one run at constant flow, and what it ran on. */
export const oneRunLog = <const L extends number>(least: L) =>
  ({
    volumes: { ...volumeLog, least },
    bars: { ...pressureLog, least },
    area,
    flow: { ...flow, help: 'Through the filter, held through the run.' },
    viscosity,
    solids: solidsToCake,
    ...onSeptum,
  }) as const;

/** A figure to which each of several logs holds: one for all rows, or one each. */
export const heldThrough = <const L extends number>(least: L) => {
  const each = { kind: 'series', least, oneForAll: true } as const;
  return {
    flow: { ...flow, ...each, help: 'Through the filter: one for all rows, or one each; held through a run.' },
    viscosity: { ...viscosity, ...each },
    solids: { ...solidsToCake, ...each, help: `${solidsToCake.help} One for all rows of the log, or one each.` },
  } as const;
};

interface OnSeptum {
  readonly septumRadius: number;
  readonly cakeDensity: number | undefined;
}

export const densityRefusal = ({ septumRadius, cakeDensity }: OnSeptum): string | undefined =>
  septumRadius > 0 && cakeDensity === undefined
    ? 'Cake density is needed with a septum radius: give it, or a radius of 0 for a flat septum.'
    : undefined;

/** A flat septum where no radius is given; the density then does not matter. */
export const septumOf = ({ septumRadius, cakeDensity = 1 }: OnSeptum) => ({ septumRadius, cakeDensity });
