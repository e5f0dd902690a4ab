import { calculation } from '../core/calculation.js';
import { errorFields } from '../errors/errorFields.js';
import { scaled } from '../errors/estimate.js';
import { POINTS_METHOD, pointsTold, STUDENT_SOURCE } from '../errors/points.js';
import { boundary } from '../numerics/boundary.js';
import { extent } from '../numerics/extent.js';
import { fitPlane, type Plane } from '../numerics/plane.js';
import { oneSided } from '../numerics/student.js';
import { mean } from '../numerics/sums.js';
import { bodyFeed, haze } from '../quantities.js';
import { flux } from './inputs.js';

const each = { kind: 'series', least: 3, oneForAll: true, optional: true } as const;

/** Places that are looked at before the turn between two of them is closed in on. */
const STEPS = 200;

/** Where the fitted haze, or a bound of it, first falls to its limit; undefined where it does not up to a feed. */
function feedAt(reaches: (feed: number) => boolean, most: number): number | undefined {
  if (reaches(0)) return 0;
  const feeds = Array.from({ length: STEPS }, (_, step) => ((step + 1) * most) / STEPS);
  const first = feeds.findIndex(reaches);
  return first < 0 ? undefined : boundary(reaches, feeds[first - 1] ?? 0, feeds[first] as number).beyond;
}

/** Feeds are looked through up to so many times the largest that was run. */
const FURTHEST = 3;

function remark(least: number | undefined, safe: number | undefined, [low, high]: readonly [number, number]): string {
  if (least === undefined)
    return 'No feed that was looked through, up to three times the largest run, keeps the limit.';
  if (least < low) return 'Less than was ever run keeps the limit by this line: a guess until a trial is run there.';
  if (least > high || safe === undefined || safe > high)
    return 'The feed lies, or may lie, beyond what was run: a guess until a trial is run there.';
  return 'none';
}

export const fitClarity = calculation({
  id: 'FITCLARITY',
  summary: 'How outlet haze falls with the body feed, and the least feed that keeps a limit.',
  question: 'How little body feed keeps my beer clear?',
  inputs: {
    doses: {
      ...bodyFeed,
      kind: 'series',
      least: 3,
      label: 'Body feeds',
      help: 'Of each run, as bought, in any order.',
    },
    hazes: {
      ...haze,
      kind: 'series',
      least: 3,
      label: 'Outlet hazes',
      limit: [0.001, 1000],
      help: 'At the filter’s outlet in each run, all by one meter: a mean once the run is steady.',
    },
    limit: { ...haze, label: 'Haze limit', limit: [0.001, 1000], help: 'Outlet haze that no run may exceed.' },
    fluxes: {
      ...flux,
      ...each,
      label: 'Fluxes',
      help: 'Of each run, where they differ: more flow over the area carries more haze through. One for all, or left out, where it is the same.',
    },
    flux: {
      ...flux,
      optional: true,
      label: 'Flux asked for',
      help: 'At which the limit is to be kept; left out, the mean of the runs.',
    },
    certainty: {
      kind: 'number',
      label: 'Certainty',
      unit: 'fraction',
      limit: [0.5, 0.99],
      usual: [0.8, 0.95],
      preset: 0.9,
      help: 'Chance that the mean outlet haze keeps the limit at the least feed on the safe side.',
      source:
        'Limits: half is the best guess itself; beyond 99 % a few runs tell nothing. Preset: common practice, no source.',
    },
  },
  output: {
    kind: 'report',
    fields: {
      least: { label: 'Least body feed', unit: 'g/hL' },
      safe: { label: 'Least body feed, on the safe side', unit: 'g/hL' },
      fall: { label: 'Fall of the haze’s logarithm', unit: 'per g/hL', error: true },
      power: { label: 'Exponent of the flux', unit: '' },
      powerError: { label: 'Exponent of the flux, standard error', unit: '' },
      now: { label: 'Haze at the least feed run', unit: 'EBC' },
      rSquared: { label: 'R²', unit: '' },
      remark: { label: 'Remark', text: true },
      times: errorFields.times,
      errors: errorFields.errors,
    },
  },
  method: `least squares of ln haze = a − fall × body feed + exponent × ln flux; the exponent only where fluxes differ. Least body feed is where this line meets the limit; on the safe side, where its upper bound does (Student’s t, one side). ${POINTS_METHOD}. Least body feed goes into a plan’s Least body feed for clarity, BESTFEED and FEEDAFTERSWAP`,
  sources: [
    'A model without a standard behind it: each further g/hL holds back the same share of the haze that still passes. It is to be fitted to your own runs.',
    STUDENT_SOURCE,
  ],
  cautions: ['dust'],
  example: {
    given: { doses: [60, 80, 100, 120], hazes: [1, 0.8, 0.64, 0.512], limit: 0.7 },
    result: { remark: 'none', rSquared: 1 },
  },
  compute: ({ doses, hazes, limit, fluxes, flux, certainty }) => {
    const differ = fluxes !== undefined && extent(fluxes).span > 0;
    const logFluxes = fluxes?.map(Math.log);
    const meanFlux = logFluxes ? mean(logFluxes) : 0;
    const offFlux = differ && flux !== undefined ? Math.log(flux) - meanFlux : 0;
    const columns = [
      new Float64Array(doses.length).fill(1),
      doses.map((dose) => -dose),
      ...(differ ? [(logFluxes as Float64Array).map((one) => one - meanFlux)] : []),
    ];
    const plane = fitPlane(columns, hazes.map(Math.log));
    if (plane === undefined)
      return {
        none: 'The runs do not differ in body feed, or in body feed and flux together, so no fall of the haze can be told.',
      };
    const [, fall = 0, power = 0] = plane.coefficients;
    if (!(fall > 0))
      return { none: 'The outlet haze does not fall with the body feed in these runs, so no feed can be told.' };
    const at = (feed: number) => [1, -feed, ...(differ ? [offFlux] : [])];
    const { least: low, most: high } = extent(doses);
    const heightAt = (feed: number) =>
      at(feed).reduce((sum, one, index) => sum + one * (plane.coefficients[index] as number), 0);
    const find = (beyond: number) =>
      feedAt((feed) => heightAt(feed) + beyond * errorAt(plane, at(feed)) <= Math.log(limit), FURTHEST * high);
    const least = find(0);
    const safe = plane.freedom > 0 ? find(oneSided(certainty, plane.freedom)) : undefined;
    const sure = (which: number) =>
      plane.deviation === undefined
        ? undefined
        : plane.deviation * plane.scale(plane.coefficients.map((_, index) => (index === which ? 1 : 0)));
    return {
      least,
      safe,
      fall: scaled(fall, sure(1)),
      power: differ ? power : undefined,
      powerError: differ ? sure(2) : undefined,
      now: Math.exp(heightAt(low)),
      rSquared: plane.rSquared,
      remark: remark(least, safe, [low, high]),
      ...pointsTold(plane.freedom, 'runs'),
    };
  },
});

const errorAt = ({ deviation = 0, scale }: Plane, gradient: readonly number[]): number => deviation * scale(gradient);
