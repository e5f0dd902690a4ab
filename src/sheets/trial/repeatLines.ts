import { compareRuns } from '../../cake/compareRuns.js';
import { fitFeed } from '../../cake/fitFeed.js';
import { trialPlan } from '../../cake/trialPlan.js';
import { declaredInput, inputCell, resultCell, text } from '../cells.js';
import { call, columnOf, judgement } from '../formula.js';
import { type At, gap, heading, type Line, note, titles, units } from '../layout.js';
import { reportLines } from '../reports.js';
import { columns, computed, input, withoutSecond } from './lines.js';
import { REPEATED_RUNS } from './logs.js';

/** Runs that the sheet has room for, those of both logs among them. */
const ROOM = 16;
const DIGITS = 4;
/** The first runs are those whose logs stand below: their rises follow their fits. */
const LOGGED = columns.figures.length;
const TYPED = ROOM - LOGGED;

const RISE = declaredInput(fitFeed, 'rises');

const logged = (run: number): Line => ({
  ...(run === 0
    ? { marks: { repeatedPowders: { column: 0, rows: ROOM }, repeatedRises: { column: 1, rows: ROOM } } }
    : {}),
  cells: (at) => [
    text(`${columns.figures[run]}`, 'label'),
    resultCell(`=${at(`fit.risePerHour.${run}`)}`, fitFeed.inputs.rises.unit, DIGITS),
    text('from its log, fitted below', 'note'),
  ],
});

const typed = (run: number): Line => ({
  ...(run === 0
    ? {
        marks: { typedRises: { column: 1, rows: TYPED } },
        judged: [{ cells: { column: 1, rows: TYPED }, by: { column: 2 } }],
      }
    : {}),
  cells: (at) => [
    { text: REPEATED_RUNS[run]?.[0] ?? '', style: 'input', note: compareRuns.inputs.powders.help },
    inputCell(RISE, REPEATED_RUNS[run]?.[1], DIGITS),
    {
      style: 'note',
      ...(run === 0 ? { formula: judgement(at('typedRises'), fitFeed, fitFeed.inputs.rises.label) } : {}),
    },
  ],
});

const table: readonly Line[] = [
  ...Array.from({ length: LOGGED }, (_, run) => logged(run)),
  ...Array.from({ length: TYPED }, (_, run) => typed(run)),
];

const compared = (at: At): string =>
  call(compareRuns.id, [at('repeatedPowders'), at('repeatedRises'), at('worthSeeing')]);

const planned = (at: At): string => call(trialPlan.id, [at('worthSeeing'), at('runScatter')]);

const single = { ...columns, figures: columns.figures.slice(0, 1) };

export const repeatLines: readonly Line[] = [
  heading('Repeated runs'),
  note(
    'One row for each run, in the order of the runs: old, new, new, old, and so on. The rises of the first two are those of the logs below.',
  ),
  titles(['Powder', 'Pressure rise', 'Judged rise'], [1, 2]),
  units(['', 'bar/h'], [0, 3]),
  ...table,
  gap,
  heading('What the repeated runs say'),
  input('worthSeeing', compareRuns, 'worth', 0.1),
  ...reportLines(single, 'runs', compareRuns, (at) => [compared(at)]).map(withoutSecond),
  input('runScatter', trialPlan, 'scatter', 0.05),
  computed(
    'runsNeeded',
    'Runs of each powder that a trial takes',
    (at) => `=COUNT(${columnOf(planned(at), 1)})/2`,
    '',
    'half the rows of TRIALPLAN, which has their order: to see the difference worth seeing in four trials of five, at the scatter entered',
    0,
  ),
  gap,
];
