import { feedRise } from '../../src/cake/feedRise.js';
import { cakeSolids } from '../../src/feed/cakeSolids.js';
import { triangular } from '../../src/numerics/triangular.js';
import { nowOf, proposedOf } from '../../src/sheets/scenario.js';
import { columns } from '../../src/sheets/trial/lines.js';
import { RUNS, TRIAL_FEEDS } from '../../src/sheets/trial/trialCase.js';
import { figureOf } from './library.js';

const rounded = (value: number, digits: number) => Number(value.toFixed(digits));

/** Width of the noise on a pressure reading, bar, on a trial’s rise, from run to run and on a haze, as shares: each reaches half of it each way. */
export const NOISE = { bar: 0.1, rise: 0.02, run: 0.2, haze: 0.06 } as const;
const SEEDS = { logs: [11, 12], trials: 13, repeated: 14, hazes: 15 } as const;
/** The runs after the two that were logged, in the order of TRIALPLAN. */
const TURNS = [1, 0, 0, 1, 1, 0] as const;
const MINUTES = 15;
const READINGS = 34;
const TRIAL_HOURS = 8;

const permeabilities = {
  aidPermeability: nowOf('aidPermeability'),
  beerSolidsPermeability: nowOf('beerSolidsPermeability'),
};

const filter = {
  flux: nowOf('flow') / nowOf('area'),
  viscosity: nowOf('viscosity'),
  beerSolids: nowOf('beerSolids'),
  cakeDensity: nowOf('cakeDensity'),
};

const dryFeed = (feed: number) => feed * (1 - nowOf('aidMoisture'));

/** What the physics says of a run without noise, bar/h. */
export const trueRise = (run: 0 | 1): number =>
  figureOf(feedRise, {
    ...filter,
    ...permeabilities,
    dose: dryFeed(RUNS.feed[run]),
    stabiliser: RUNS.stabiliserDose[run] * (1 - RUNS.stabiliserMoisture[run]),
    stabiliserPermeability: run === 0 ? nowOf('stabiliserPermeability') : proposedOf('stabiliserPermeability'),
  });

export const trueSolids = (run: 0 | 1): number =>
  figureOf(cakeSolids, {
    feed: RUNS.feed[run],
    stabiliser: RUNS.stabiliserDose[run],
    stabiliserMoisture: RUNS.stabiliserMoisture[run],
    beerSolids: filter.beerSolids,
    aidMoisture: nowOf('aidMoisture'),
  });

/** A run as its gauge would have been read every quarter of an hour: hours, hL, bar. */
export function loggedRun(run: 0 | 1): number[][] {
  const next = triangular(SEEDS.logs[run]);
  return Array.from({ length: READINGS }, (_, reading) => {
    const hours = (reading * MINUTES) / 60;
    const bar = nowOf('startPressure') + trueRise(run) * hours + NOISE.bar * (next() - 0.5);
    return [hours, hours * nowOf('flow'), rounded(bar, 2)];
  });
}

/** Outlet haze of the invented beer, EBC: at no body feed, and what each g/hL takes off its logarithm. */
export const TRUE_HAZE = { none: 1.16, fall: 0.008 } as const;

/** The feed trials as they would have been noted: body feed as bought, rise in bar/h, hours of the reading, outlet haze in EBC. */
export function feedTrials(): number[][] {
  const next = triangular(SEEDS.trials);
  const hazes = triangular(SEEDS.hazes);
  return TRIAL_FEEDS.map((feed) => {
    const rise = figureOf(feedRise, { ...filter, ...permeabilities, dose: dryFeed(feed) });
    const haze = TRUE_HAZE.none * Math.exp(-TRUE_HAZE.fall * feed) * (1 + NOISE.haze * (hazes() - 0.5));
    return [feed, rounded(rise * (1 + NOISE.rise * (next() - 0.5)), 4), TRIAL_HOURS, rounded(haze, 2)];
  });
}

/** Repeated runs as they would have been noted: powder, and rise in bar/h, which differs from run to run. */
export function repeatedRuns(): (readonly [string, number])[] {
  const next = triangular(SEEDS.repeated);
  return TURNS.map((run) => {
    const rise = trueRise(run) * (1 + NOISE.run * (next() - 0.5));
    return [`${columns.figures[run]}`, rounded(rise, 4)];
  });
}
