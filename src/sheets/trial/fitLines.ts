import { cakePermeability } from '../../cake/cakePermeability.js';
import { cakePressure } from '../../cake/cakePressure.js';
import { fitFeed } from '../../cake/fitFeed.js';
import { fitRun } from '../../cake/fitRun.js';
import { riseRate } from '../../cake/riseRate.js';
import { cakeSolids } from '../../feed/cakeSolids.js';
import { precoatMass } from '../../feed/precoatMass.js';
import { sameSolids } from '../../moisture/sameSolids.js';
import { call, remarksIn } from '../formula.js';
import { type At, gap, heading, type Line, type Mark, markedFirst } from '../layout.js';
import { reportLines } from '../reports.js';
import { nowOf } from '../scenario.js';
import { columns, computed, input, result } from './lines.js';
import { RUNS } from './trialCase.js';

const BOTH = [0, 1] as const;
const SIDES = ['old', 'new'] as const;
const both = (key: string) => SIDES.map((side) => `${side}${key}`);

export const runLines: readonly Line[] = [
  heading('The two runs'),
  input('trialArea', fitRun, 'area', nowOf('area')),
  input(both('Flow'), fitRun, 'flow', [nowOf('flow'), nowOf('flow')]),
  input(both('Viscosity'), fitRun, 'viscosity', [nowOf('viscosity'), nowOf('viscosity')]),
  input(both('Feed'), cakeSolids, 'feed', RUNS.feed, { digits: 1 }),
  input('trialAidMoisture', cakeSolids, 'aidMoisture', nowOf('aidMoisture')),
  input(both('Stabiliser'), cakeSolids, 'stabiliser', RUNS.stabiliserDose, { digits: 1 }),
  input(both('StabiliserMoisture'), cakeSolids, 'stabiliserMoisture', RUNS.stabiliserMoisture),
  input(both('BeerSolids'), fitFeed, 'beerSolids', [nowOf('beerSolids'), nowOf('beerSolids')]),
  input('trialDensity', cakePermeability, 'density', nowOf('cakeDensity')),
  input('trialRadius', fitRun, 'septumRadius', nowOf('septumRadius')),
  input('trialPrecoat', precoatMass, 'load', nowOf('precoatLoad')),
  computed(
    'trialDryPrecoat',
    'Precoat load, dry',
    (at) => `=${call(sameSolids.id, [at('trialPrecoat'), at('trialAidMoisture'), '0'])}`,
    fitRun.inputs.precoatLoad.unit,
    'precoat load less its moisture; it matters on a candle only',
  ),
  computed(
    both('Flux'),
    fitFeed.inputs.flux.label,
    (at) => SIDES.map((side) => `=${at(`${side}Flow`)}/${at('trialArea')}`),
    fitFeed.inputs.flux.unit,
    'flow / filter area',
    2,
  ),
  result(
    both('Solids'),
    cakeSolids,
    SIDES.map((side) => ({
      feed: `${side}Feed`,
      stabiliser: `${side}Stabiliser`,
      stabiliserMoisture: `${side}StabiliserMoisture`,
      beerSolids: `${side}BeerSolids`,
      aidMoisture: 'trialAidMoisture',
    })),
  ),
  computed(
    both('Remarks'),
    'Pressure readings that are not usual',
    (at) =>
      SIDES.map((side) => {
        const bars = at(`${side}Bars`);
        const judged = call('RANGECHECK', [`"${fitRun.id}"`, `"${fitRun.inputs.bars.label}"`, bars]);
        return remarksIn(`IF(LEN(${bars})=0,"usual",${judged})`);
      }),
    '',
    'counted by RANGECHECK; the reports below say what else looks odd',
    0,
  ),
];

/** The septum on which the cake grows, as FITRUN and CAKEPRESSURE take it. */
const SEPTUM = ['trialRadius', 'trialDensity', 'trialDryPrecoat'] as const;

const fitCall = (at: At, side: string): string =>
  call(fitRun.id, [
    ...['Volumes', 'Bars'].map((key) => at(side + key)),
    at('trialArea'),
    ...['Flow', 'Viscosity', 'Solids'].map((key) => at(side + key)),
    ...SEPTUM.map(at),
  ]);

/** Both ends of the fitted line: enough to draw it where it is straight, as on a flat septum. */
const ends = [
  ['First', 'MIN'],
  ['Last', 'MAX'],
] as const;

const marksOf = (key: string): Record<string, Mark> =>
  Object.fromEntries(BOTH.map((run) => [`ends.${key}.${run}`, { column: run + 1, rows: ends.length }]));

/** Fitted pressure drop after so much beer: the start, and the cake that was laid since. */
export const fittedAt = (at: At, run: 0 | 1, volume: string): string => {
  const side = SIDES[run];
  const load = `${at(`${side}Solids`)}/1000*${volume}/${at('trialArea')}`;
  const flowing = [at(`${side}Flux`), at(`${side}Viscosity`), load, at(`fit.resistance.${run}`), '0', '0'];
  return `${at(`fit.start.${run}`)}+${call(cakePressure.id, [...flowing, ...SEPTUM.map(at)])}`;
};

const endLines: readonly Line[] = [
  ...markedFirst(
    ends.map(([which, least]) =>
      computed(
        both(`Volume${which}`),
        `Volume at the ${which.toLowerCase()} reading`,
        (at) => SIDES.map((side) => `=${least}(${at(`${side}Volumes`)})`),
        'hL',
        'from the log',
      ),
    ),
    marksOf('volume'),
  ),
  ...markedFirst(
    ends.map(([which]) =>
      computed(
        both(`Fit${which}`),
        `Fitted pressure drop at the ${which.toLowerCase()} reading`,
        (at) => BOTH.map((run) => `=${fittedAt(at, run, at(`${SIDES[run]}Volume${which}`))}`),
        'bar',
        'start pressure drop + that of the cake laid until then',
      ),
    ),
    marksOf('bar'),
  ),
];

export const fitLines: readonly Line[] = [
  heading('What the logs say'),
  ...reportLines(columns, 'fit', fitRun, (at) => SIDES.map((side) => fitCall(at, side))),
  computed(
    both('Rise'),
    'Rise by the median of slopes',
    (at) => SIDES.map((side) => `=${call(riseRate.id, [at(`${side}Hours`), at(`${side}Bars`)])}`),
    'bar/h',
    riseRate.method,
  ),
  ...endLines,
  result(
    both('Mix'),
    cakePermeability,
    BOTH.map((which) => ({ resistance: `fit.resistance.${which}`, density: 'trialDensity' })),
    { label: 'Permeability of the whole cake' },
  ),
  gap,
];
