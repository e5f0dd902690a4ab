import { calculation } from '../core/calculation.js';
import { fromSI } from '../core/units.js';
import { errorFields } from '../errors/errorFields.js';
import { fromLogarithm } from '../errors/estimate.js';
import { POINTS_METHOD, pointsTold, STUDENT_SOURCE } from '../errors/points.js';
import { fitLine, type Line } from '../numerics/line.js';
import { heightError } from '../numerics/lineChecks.js';
import { permeability } from '../quantities.js';
import { feedInputs, hoursRefusal, NO_STABILISER_PERMEABILITY } from './feedInputs.js';
import { shapeRemark } from './lineRemarks.js';
import { resistanceOfRise } from './meanRise.js';
import { DARCY_SOURCE, MIXTURE_SOURCE, ROUND_SOURCE } from './sources.js';

const { dose, flux, viscosity, beerSolids, cakeDensity, stabiliser, stabiliserPermeability } = feedInputs;
const { septumRadius, precoatLoad, until, from, compressibility } = feedInputs;

/** One for all runs, or one each. */
const each = { kind: 'series', least: 3, oneForAll: true } as const;
const eachOptional = { ...each, preset: undefined, optional: true } as const;

/** A run's figure where the series is given. */
const at = (series: Float64Array | undefined, run: number): number => series?.[run] ?? 0;

/** 95 % of what errs by chance lies within so many standard errors, where they are known. */
const CERTAIN = 1.959_963_984_540_054;

/** What the scatter of runs and a figure alike in all of them add up to, where `times` its result reaches 95 %. */
const together = (error: number | undefined, alike: number, times: number): number | undefined =>
  error && Math.hypot(error, (alike * CERTAIN) / times);

const CURVES = {
  up: 'the runs differ in more than their doses, or the model does not hold for this beer',
  down: 'the runs differ in more than their doses, or the model does not hold for this beer',
};

function remark(aid: number, beer: number): string {
  if (!(aid > beer))
    return 'The filter aid comes out no more permeable than the beer solids, which cannot be: the runs differ in more than their doses.';
  const [least, most] = permeability.limit;
  const serves = (value: number) => fromSI(value, 'darcy') >= least && fromSI(value, 'darcy') <= most;
  return serves(aid) && serves(beer)
    ? 'none'
    : 'A permeability lies beyond what a plan reads: too little spread in the doses, or too much scatter.';
}

export const fitFeed = calculation({
  id: 'FITFEED',
  summary: 'Permeability of filter aid and beer solids, from runs at several body feeds.',
  question: 'How permeable are filter aid and beer solids in my cake?',
  inputs: {
    doses: { ...dose, kind: 'series', least: 3, label: 'Body feeds, dry' },
    rises: {
      kind: 'series',
      least: 3,
      label: 'Rises',
      unit: 'bar/h',
      limit: [1e-9, 1000],
      usual: [0.05, 2],
      help: 'Mean pressure rise of each run (FITRUN, FITCAKES; RISERATE on a flat septum only).',
      source: 'Usual range: around the trade’s 0.2–0.4 bar/h; from memory.',
    },
    flux: { ...flux, ...each },
    viscosity: { ...viscosity, ...each },
    beerSolids: { ...beerSolids, ...each },
    cakeDensity,
    stabiliser: { ...stabiliser, ...eachOptional },
    stabiliserPermeability,
    septumRadius,
    precoatLoad,
    until: { ...until, ...eachOptional },
    from: { ...from, ...eachOptional },
    compressibility,
    solidsError: {
      kind: 'number',
      label: 'Error of the beer solids',
      unit: 'fraction',
      limit: [0, 1],
      usual: [0.05, 0.5],
      preset: 0,
      help: 'Standard error as a share, alike in all runs, as of an unsure cell mass (SOLIDSLOAD). What differs from run to run shows as scatter without it. A plan with the very beer solids of these runs hardly feels it: both permeabilities are then off together.',
      source:
        'Usual range: cell masses of 30 to 125 pg (SOLIDSLOAD) leave a share of some 50 %; from memory, no source.',
    },
  },
  output: {
    kind: 'report',
    fields: {
      aid: { label: 'Aid permeability', unit: 'darcy', error: true },
      beer: { label: 'Beer solids permeability', unit: 'darcy', error: true },
      rSquared: { label: 'R²', unit: '' },
      shape: { label: 'Shape', text: true },
      remark: { label: 'Remark', text: true },
      times: errorFields.times,
      errors: errorFields.errors,
    },
  },
  method: `k of each run from its mean rise: μ u² c/(ρ rise) for a rigid cake on a flat septum, else from what the pressure drop gained between both times, as in FEEDRISE; (c ln k − s ln k_stabiliser)/(d + b) fitted by least squares over d/(d + b), d body feed, s stabiliser, b beer solids. R² is that of this line. Both figures belong together: never mix them with figures of another origin. ${POINTS_METHOD}: a figure’s logarithm by its relative error. Error of the beer solids adds how far each figure moves with them, so that both reaches of 95 % add up as squares`,
  sources: [DARCY_SOURCE, MIXTURE_SOURCE, ROUND_SOURCE, STUDENT_SOURCE],
  cautions: ['pressure'],
  example: {
    given: {
      doses: [60, 90, 120],
      rises: [0.4, 0.33, 0.3],
      flux: [5],
      viscosity: [2.8],
      beerSolids: [25],
      cakeDensity: 300,
    },
    result: { shape: 'too few rows to tell', remark: 'none' },
  },
  refuse: ({ doses, stabiliser, stabiliserPermeability, from, until, ...read }) => {
    if (stabiliserPermeability === undefined && stabiliser?.some((one) => one > 0)) return NO_STABILISER_PERMEABILITY;
    for (let run = 0; run < doses.length; run++) {
      const refusal = hoursRefusal(read, at(from, run), at(until, run), `, row ${run + 1},`);
      if (refusal !== undefined) return refusal;
    }
    return undefined;
  },
  compute: ({ doses, rises, stabiliserPermeability = 1, solidsError, ...read }) => {
    /** The line if the beer had brought so many times the solids. */
    const fitted = (times: number) => {
      const brought = doses.map((_, run) => times * at(read.beerSolids, run));
      const x = doses.map((aid, run) => aid / (aid + at(brought, run)));
      const y = doses.map((aid, run) => {
        const own = at(read.stabiliser, run);
        const mixed = aid + at(brought, run);
        const solids = mixed + own;
        const stretch = {
          ...read,
          solids,
          flux: at(read.flux, run),
          viscosity: at(read.viscosity, run),
          from: at(read.from, run),
          until: at(read.until, run),
        };
        const k = 1 / (resistanceOfRise(stretch, at(rises, run)) * read.cakeDensity);
        return (solids * Math.log(k) - own * Math.log(stabiliserPermeability)) / mixed;
      });
      return { x, y, line: fitLine(x, y) };
    };
    const { x, y, line } = fitted(1);
    if (line === undefined)
      return {
        none: 'Body feed and beer solids stand in one proportion throughout, so their permeabilities cannot be told apart.',
      };
    const told = pointsTold(line.count - 2, 'runs');
    const [fewer, more] = [fitted(1 / (1 + solidsError)).line, fitted(1 + solidsError).line];
    /** How far a figure's logarithm moves with the beer solids' error. */
    const moved = (of: (line: Line) => number) => (fewer && more ? Math.abs(of(more) - of(fewer)) / 2 : 0);
    const figure = (of: (line: Line) => number, error: number | undefined) =>
      fromLogarithm(of(line), together(error, moved(of), told.times ?? CERTAIN));
    const aid = figure(({ intercept, slope }) => intercept + slope, heightError(line, 1));
    const beer = figure(({ intercept }) => intercept, line.interceptError);
    return {
      aid,
      beer,
      rSquared: line.rSquared,
      shape: shapeRemark(line, x, y, CURVES),
      remark: remark(aid.value, beer.value),
      ...told,
    };
  },
});
