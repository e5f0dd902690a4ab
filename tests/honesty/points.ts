import { feedRise } from '../../src/cake/feedRise.js';
import { fitClarity } from '../../src/cake/fitClarity.js';
import { fitCompression } from '../../src/cake/fitCompression.js';
import { fitFeed } from '../../src/cake/fitFeed.js';
import { calculate } from '../../src/core/calculate.js';
import { ladderDose } from '../../src/stabiliser/ladderDose.js';
import { ladderFit } from '../../src/stabiliser/ladderFit.js';
import { type Claim, type Outcome, within } from './claim.js';
import type { Chance } from './noise.js';

const FEEDS = [50, 70, 90, 110, 140, 170];
const BEER = { flux: 5, viscosity: 2.8, cakeDensity: 300 };
const TRUE = { aidPermeability: 0.1, beerSolidsPermeability: 1e-4 };

/** Feed trials whose rises differ from run to run, and whose beer brings more or less solids than is known: each its own, or all alike. */
function feedOnce(share: number, solidsShare = 0, solidsError = 0) {
  return ({ normal }: Chance): Record<string, Outcome> => {
    const alike = solidsError > 0 ? Math.log1p(solidsError) * normal() : 0;
    const rises = FEEDS.map((dose) => {
      const beerSolids = 25 * Math.exp(solidsShare * normal() + alike);
      const rise = calculate(feedRise, { ...BEER, ...TRUE, dose, beerSolids }) as number;
      return rise * Math.exp(share * normal());
    });
    const report = calculate(fitFeed, {
      doses: FEEDS,
      rises,
      flux: [BEER.flux],
      viscosity: [BEER.viscosity],
      beerSolids: [25],
      cakeDensity: BEER.cakeDensity,
      solidsError,
    });
    if ('none' in report || 'refused' in report) return {};
    // A figure whose logarithm was fitted: its error is relative.
    const relative = ({ value, error }: { value: number; error: number | undefined }, truth: number) =>
      within({ value: Math.log(value), error: error && error / value }, report.times, Math.log(truth));
    return {
      'aid permeability': relative(report.aid, TRUE.aidPermeability),
      'beer solids permeability': relative(report.beer, TRUE.beerSolidsPermeability),
    };
  };
}

const PRESSURES = [0.5, 1, 1.5, 2, 3, 4];

function compressionOnce({ normal }: Chance): Record<string, Outcome> {
  const resistances = PRESSURES.map((pressure) => 1e11 * pressure ** 0.4 * Math.exp(0.05 * normal()));
  const report = calculate(fitCompression, { pressures: PRESSURES, resistances });
  if ('none' in report || 'refused' in report) return {};
  const { value, error } = report.resistance;
  return {
    exponent: within(report.exponent, report.times, 0.4),
    'resistance at 1 bar': within(
      { value: Math.log(value), error: error && error / value },
      report.times,
      Math.log(1e11),
    ),
  };
}

const HAZE = { start: 8, plateau: 1.5, rate: 0.03, target: 3 };
const DOSE = Math.log((HAZE.start - HAZE.plateau) / (HAZE.target - HAZE.plateau)) / HAZE.rate;

function ladderOnce(doses: readonly number[], scatter: (haze: number) => number) {
  return ({ normal }: Chance): Record<string, Outcome> => {
    const hazes = doses.map((dose) => {
      const haze = HAZE.plateau + (HAZE.start - HAZE.plateau) * Math.exp(-HAZE.rate * dose);
      return Math.max(0.01, haze + scatter(haze) * normal());
    });
    const report = calculate(ladderFit, { doses, hazes, target: HAZE.target });
    if ('none' in report || 'refused' in report) return {};
    const { least, most } = report;
    return {
      'haze without dose': within(report.start, report.times, HAZE.start),
      plateau: within(report.plateau, report.times, HAZE.plateau),
      rate: within(report.rate, report.times, HAZE.rate),
      'dose for the target': least === undefined || most === undefined ? undefined : least <= DOSE && DOSE <= most,
    };
  };
}

function enoughOnce(doses: readonly number[], scatter: (haze: number) => number) {
  return ({ normal }: Chance): Record<string, Outcome> => {
    const hazes = doses.map((dose) => {
      const haze = HAZE.plateau + (HAZE.start - HAZE.plateau) * Math.exp(-HAZE.rate * dose);
      return Math.max(0.01, haze + scatter(haze) * normal());
    });
    const dose = calculate(ladderDose, { doses, hazes, target: HAZE.target, certainty: 0.9 });
    return { 'dose that is enough': typeof dose === 'number' ? dose >= DOSE : undefined };
  };
}

const CLEAR = { height: 2, fall: 0.01, limit: 0.9 };
const LEAST = Math.log(CLEAR.height / CLEAR.limit) / CLEAR.fall;

function clarityOnce(share: number) {
  return ({ normal }: Chance): Record<string, Outcome> => {
    const hazes = FEEDS.map((dose) => CLEAR.height * Math.exp(-CLEAR.fall * dose + share * normal()));
    const report = calculate(fitClarity, { doses: FEEDS, hazes, limit: CLEAR.limit, certainty: 0.95 });
    if ('none' in report || 'refused' in report) return {};
    return {
      fall: within(report.fall, report.times, CLEAR.fall),
      'least feed on the safe side': report.safe === undefined ? undefined : report.safe >= LEAST,
    };
  };
}

const FOUR = [0, 20, 40, 60];
const SIX = [0, 10, 20, 40, 60, 100];
const NINE = [0, 10, 20, 30, 40, 60, 80, 100, 150];
const alike = () => 0.15;
const inProportion = (haze: number) => 0.05 * haze;
const claim = (id: string, made: string, noise: string, once: Claim['once'], claimed = 0.95): Claim => ({
  id,
  made,
  noise,
  claimed,
  once,
});

export const pointClaims: readonly Claim[] = [
  claim('FITFEED', '6 feeds', 'runs that differ by 3 %', feedOnce(0.03)),
  claim('FITFEED', '6 feeds', 'runs that differ by 10 %', feedOnce(0.1)),
  claim('FITFEED', '6 feeds', 'runs by 3 %, beer solids by 10 %, taken as one', feedOnce(0.03, 0.1)),
  claim('FITFEED', '6 feeds', 'runs by 3 %, beer solids by 20 %, alike in all', feedOnce(0.03, 0, 0.2)),
  claim('FITCLARITY', '6 feeds, certainty 95 %', 'hazes that differ by 10 %', clarityOnce(0.1)),
  claim('FITCOMPRESSION', '6 tests', 'tests that differ by 5 %', compressionOnce),
  ...(
    [
      ['4 doses', FOUR],
      ['6 doses', SIX],
      ['9 doses', NINE],
    ] as const
  ).flatMap(([made, doses]) => [
    claim('LADDERFIT', made, 'hazes that scatter alike', ladderOnce(doses, alike)),
    claim('LADDERFIT', made, 'in proportion to the haze', ladderOnce(doses, inProportion)),
  ]),
  claim('LADDERDOSE', '6 doses, certainty 90 %', 'hazes that scatter alike', enoughOnce(SIX, alike), 0.9),
  claim('LADDERDOSE', '6 doses, certainty 90 %', 'in proportion to the haze', enoughOnce(SIX, inProportion), 0.9),
];
