import { compareRuns } from '../../cake/compareRuns.js';
import { trialPlan } from '../../cake/trialPlan.js';
import { ABOVE, blockLines, countOf, judgementOf, placesOf } from '../block.js';
import { text } from '../cells.js';
import { call, columnOf } from '../formula.js';
import { type At, gap, heading, type Line, note } from '../layout.js';
import { reportLines } from '../reports.js';
import { quotedText } from '../verdict.js';
import { BOTH } from './fitted.js';
import { columns, computed, input, row, withoutSecond } from './lines.js';
import { repeatList } from './repeatList.js';

/**
 * A column of the list with the two runs whose logs stand below: they take the place of its title and its unit, which
 * hold no run. A row that does not count is blank, which COMPARERUNS passes over.
 */
function withLogged(at: At, key: string, logged: readonly [string, string]): string {
  const column = placesOf(repeatList, at);
  const range = column(`${key}${ABOVE}`);
  const top = `MIN(ROW(${range}))`;
  const listed = `IF(${column(`counted${ABOVE}`)}=1,${range},"")`;
  return `IF(ROW(${range})=${top},${logged[0]},IF(ROW(${range})=${top}+1,${logged[1]},${listed}))`;
}

const compared = (at: At): string =>
  call(compareRuns.id, [
    withLogged(at, 'powder', BOTH.map((run) => quotedText(columns.figures[run] as string)) as [string, string]),
    withLogged(at, 'rise', BOTH.map((run) => at(`fit.risePerHour.${run}`)) as [string, string]),
    at('worthSeeing'),
  ]);

const planned = (at: At): string => call(trialPlan.id, [at('worthSeeing'), at('runScatter')]);

const single = { ...columns, figures: columns.figures.slice(0, 1) };

/** How many runs are compared, and the first that cannot be. */
const runsLine: Line = {
  marks: { comparedRuns: { column: 1 }, 'repeats.judged': { column: columns.judgement } },
  judged: [{ cells: { column: 1 }, by: { column: columns.judgement } }],
  cells: (at) =>
    row(
      'Runs that are compared',
      [{ formula: `=${BOTH.length}+${countOf(repeatList, at)}`, format: '0', style: 'result' }],
      '',
      [{ formula: `=${judgementOf(repeatList, at, [])}`, style: 'note' }],
      text('the two whose logs stand below, and those of the list', 'note'),
    ),
};

export const repeatLines: readonly Line[] = [
  heading('Repeated runs'),
  note(
    `One row for each run after the two that were logged below, in their order: new, old, old, new, and so on. Room for ${repeatList.room}; rows may be put in and taken out anywhere.`,
  ),
  ...blockLines(repeatList),
  gap,
  heading('What the repeated runs say'),
  runsLine,
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
