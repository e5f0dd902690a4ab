import { calculation } from '../core/calculation.js';
import { fromSI } from '../core/units.js';
import { fitLine } from '../numerics/line.js';
import { heightError } from '../numerics/lineChecks.js';
import { permeability } from '../quantities.js';
import { fromLogarithm } from './estimate.js';
import { feedInputs, NO_STABILISER_PERMEABILITY } from './feedInputs.js';
import { shapeRemark } from './lineRemarks.js';
import { DARCY_SOURCE, MIXTURE_SOURCE } from './sources.js';

const { dose, flux, viscosity, beerSolids, cakeDensity, stabiliser, stabiliserPermeability } = feedInputs;

/** One for all runs, or one each. */
const each = { kind: 'series', least: 3, oneForAll: true } as const;

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
      help: 'Pressure rise of each run (RISERATE, FITRUN).',
      source: 'Usual range: around the trade’s 0.2–0.4 bar/h; from memory.',
    },
    flux: { ...flux, ...each },
    viscosity: { ...viscosity, ...each },
    beerSolids: { ...beerSolids, ...each },
    cakeDensity,
    stabiliser: { ...stabiliser, ...each, preset: undefined, optional: true },
    stabiliserPermeability,
  },
  output: {
    kind: 'report',
    fields: {
      aid: { label: 'Aid permeability', unit: 'darcy', error: true },
      beer: { label: 'Beer solids permeability', unit: 'darcy', error: true },
      rSquared: { label: 'R²', unit: '' },
      shape: { label: 'Shape', text: true },
      remark: { label: 'Remark', text: true },
    },
  },
  method:
    'k = μ u² c/(ρ rise) of each run; (c ln k − s ln k_stabiliser)/(d + b) fitted by least squares over d/(d + b), d body feed, s stabiliser, b beer solids. R² is that of this line. Both figures belong together: never mix them with figures of another origin',
  sources: [DARCY_SOURCE, MIXTURE_SOURCE],
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
  refuse: ({ stabiliser, stabiliserPermeability }) =>
    stabiliserPermeability === undefined && stabiliser?.some((one) => one > 0) ? NO_STABILISER_PERMEABILITY : undefined,
  compute: ({ doses, rises, flux, viscosity, beerSolids, cakeDensity, stabiliser, stabiliserPermeability = 1 }) => {
    const at = (series: Float64Array, run: number) => series[run] as number;
    const x = doses.map((aid, run) => aid / (aid + at(beerSolids, run)));
    const y = doses.map((aid, run) => {
      const own = stabiliser === undefined ? 0 : at(stabiliser, run);
      const mixed = aid + at(beerSolids, run);
      const total = mixed + own;
      const k = (at(viscosity, run) * at(flux, run) ** 2 * total) / (cakeDensity * at(rises, run));
      return (total * Math.log(k) - own * Math.log(stabiliserPermeability)) / mixed;
    });
    const line = fitLine(x, y);
    if (line === undefined)
      return {
        none: 'Body feed and beer solids stand in one proportion throughout, so their permeabilities cannot be told apart.',
      };
    const aid = fromLogarithm(line.intercept + line.slope, heightError(line, 1));
    const beer = fromLogarithm(line.intercept, line.interceptError);
    return {
      aid,
      beer,
      rSquared: line.rSquared,
      shape: shapeRemark(line, x, y, CURVES),
      remark: remark(aid.value, beer.value),
    };
  },
});
