import { cakePermeability } from '../../cake/cakePermeability.js';
import { fitFeed } from '../../cake/fitFeed.js';
import { fitRun } from '../../cake/fitRun.js';
import { riseRate } from '../../cake/riseRate.js';
import { cakeSolids } from '../../feed/cakeSolids.js';
import { precoatMass } from '../../feed/precoatMass.js';
import { sameSolids } from '../../moisture/sameSolids.js';
import { resultCell, text } from '../cells.js';
import { call, figuresIn } from '../formula.js';
import { type At, gap, heading, type Line, type Mark, marked, markedFirst } from '../layout.js';
import { reportLines } from '../reports.js';
import { nowOf } from '../scenario.js';
import { BOTH, both, fittedAt, type Run, SEPTUM, SIDES } from './fitted.js';
import { columns, computed, input, result, row } from './lines.js';
import { examplesOf, flowOfLog, logJudgement, readingKeys } from './logList.js';
import { RUNS } from './trialCase.js';

/** How many readings each log has, and the first of them that is not sound. */
const readingsLine: Line = {
  marks: {
    oldReadings: { column: 1 },
    newReadings: { column: 2 },
    ...Object.fromEntries(
      BOTH.map((run): [string, Mark] => [`log.judged.${run}`, { column: columns.judgement + run }]),
    ),
  },
  judged: BOTH.map((run) => ({ cells: { column: run + 1 }, by: { column: columns.judgement + run } })),
  cells: (at) =>
    row(
      'Readings of the log',
      SIDES.map((side) => resultCell(`=COUNT(${at(`log.${side}Bars`)})`, '', 0)),
      '',
      SIDES.map((side) => ({ formula: `=${logJudgement(at, side)}`, style: 'note' })),
      text('counted in the list “The logs”; a reading that is not sound is named here and beside its row', 'note'),
    ),
};

/** Of them, those that nobody has replaced. */
const exampleReadings = marked(
  computed(
    both('Examples'),
    'Figures of them that are still the example’s',
    (at) => SIDES.map((side) => `=${examplesOf(at, side)}`),
    '',
    'counted where all three of a reading are those of one reading of the example, and no source stands beside them',
    0,
  ),
  { 'log.examples': { column: 1, columns: SIDES.length } },
);

/** The readings of one run, without gaps. */
const logOf = (at: At, side: Run, ...which: readonly number[]): readonly string[] => {
  const ranges = which.map((one) => at(`log.${readingKeys(side)[one]}`));
  return ranges.map((range) =>
    figuresIn(
      range,
      ranges.filter((other) => other !== range),
    ),
  );
};

export const runLines: readonly Line[] = [
  heading('The two runs'),
  input('trialArea', fitRun, 'area', nowOf('area')),
  input(both('Flow'), fitRun, 'flow', [nowOf('flow'), nowOf('flow')], { further: flowOfLog }),
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
  readingsLine,
  exampleReadings,
];

const fitCall = (at: At, side: Run): string =>
  call(fitRun.id, [
    ...logOf(at, side, 1, 2),
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

const endLines: readonly Line[] = [
  ...markedFirst(
    ends.map(([which, least]) =>
      computed(
        both(`Volume${which}`),
        `Volume at the ${which.toLowerCase()} reading`,
        (at) => SIDES.map((side) => `=${least}(${at(`log.${side}Volumes`)})`),
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
    (at) => SIDES.map((side) => `=${call(riseRate.id, logOf(at, side, 0, 2))}`),
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
