import { cakePermeability } from '../../cake/cakePermeability.js';
import { fitFeed } from '../../cake/fitFeed.js';
import { fitRun } from '../../cake/fitRun.js';
import { riseRate } from '../../cake/riseRate.js';
import { cakeSolids } from '../../feed/cakeSolids.js';
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

const fitCall = (at: At, side: string): string =>
  call(fitRun.id, [
    ...['Volumes', 'Bars'].map((key) => at(side + key)),
    at('trialArea'),
    ...['Flow', 'Viscosity', 'Solids'].map((key) => at(side + key)),
  ]);

/** Both ends of the fitted line, which is straight: enough to draw it. */
const ends = [
  ['First', 'MIN'],
  ['Last', 'MAX'],
] as const;

const marksOf = (key: string): Record<string, Mark> =>
  Object.fromEntries(BOTH.map((run) => [`ends.${key}.${run}`, { column: run + 1, rows: ends.length }]));

const line = (at: At, run: number, volume: string) =>
  `${at(`fit.start.${run}`)}+${at(`fit.risePerHl.${run}`)}*${volume}`;

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
        (at) => SIDES.map((side, run) => `=${line(at, run, at(`${side}Volume${which}`))}`),
        'bar',
        'start pressure drop + rise × volume',
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
