import { fitRun } from '../../cake/fitRun.js';
import type { Unit } from '../../core/units.js';
import { text } from '../cells.js';
import { type At, answer, gap, heading, type Line } from '../layout.js';
import { examplesLine } from '../opening.js';
import { feedTrialList } from './feedTrialList.js';
import { BOTH } from './fitted.js';
import { computed } from './lines.js';
import { logList } from './logList.js';
import { repeatList } from './repeatList.js';

interface Compared {
  readonly key: 'risePerHour' | 'resistance';
  readonly what: string;
  readonly unit: Unit;
  readonly digits?: number;
  /** What is said of the new powder. */
  readonly less: string;
  readonly more: string;
}

const { risePerHour, resistance } = fitRun.output.fields;

const COMPARED: readonly Compared[] = [
  {
    key: 'risePerHour',
    what: 'Rise',
    unit: risePerHour.unit,
    digits: 4,
    less: 'The new powder’s pressure rises slower',
    more: 'The new powder’s pressure rises faster',
  },
  {
    key: 'resistance',
    what: resistance.label,
    unit: resistance.unit,
    less: 'The new cake resists less for each kg',
    more: 'The new cake resists more for each kg',
  },
];

const verdict = (at: At, { key, less, more }: Compared): string => {
  const share = (of: string) => `ROUND(100*${of}/${at(`fit.${key}.0`)},1)`;
  const said = `IF(${at(`${key}Difference`)}<0,"${less}","${more}")`;
  const size = `${share(`ABS(${at(`${key}Difference`)})`)}&" %, give or take "&${share(at(`${key}Reach`))}`;
  return `=IF(${at(`${key}Ratio`)}<1,"These two logs cannot be told apart from noise.",${said}&" by "&${size}&" % (95 %), in these two runs. Runs of one powder differ, too: the repeated runs tell of the powders.")`;
};

/** What holds the truth in 95 % of logs, of one fit; at least as much as many readings have. */
const reachOf = (at: At, key: string, run: 0 | 1): string =>
  `(${at(`fit.${key}Error.${run}`)}*MAX(2,${at(`fit.times.${run}`)}))^2`;

const comparison = (compared: Compared): readonly Line[] => {
  const { key, what, unit, digits } = compared;
  return [
    computed(
      ['', `${key}Difference`],
      `${what}, new less old`,
      (at) => `=${at(`fit.${key}.1`)}-${at(`fit.${key}.0`)}`,
      unit,
      'difference of the two fits',
      digits,
    ),
    computed(
      ['', `${key}Reach`],
      'What the readings leave open, 95 %',
      (at) => `=SQRT(${reachOf(at, key, 0)}+${reachOf(at, key, 1)})`,
      unit,
      'root of the sum of the squares of both standard errors, each times Standard errors in 95 %: the runs are independent',
      digits,
    ),
    computed(
      ['', `${key}Ratio`],
      'Difference over what the readings leave open',
      (at) => `=ABS(${at(`${key}Difference`)})/${at(`${key}Reach`)}`,
      '',
      'below 1 it may well be noise of the gauge; above, these two runs differ, whatever the reason',
      1,
    ),
    {
      marks: { [`${key}Verdict`]: { column: 1 } },
      cells: (at) => [text('These two runs', 'label'), { formula: verdict(at, compared), style: 'heading' }],
    },
  ];
};

const LOGS = BOTH.map((run) => `log.judged.${run}`);

/** A sentence of the answer, and below it whether what it rests on is sound: beside it, it would be cut short. */
const sentence = (
  label: string,
  formula: (at: At) => string,
  also: readonly string[],
  name?: string,
): readonly Line[] => [
  {
    ...(name ? { marks: { [name]: { column: 1 } } } : {}),
    answers: [{ column: 1, by: 1, down: 1, also }],
    cells: (at) => [text(label, 'label'), { formula: `=${formula(at)}`, style: 'heading' }],
  },
  { cells: () => [text('', 'label'), { style: 'note' }] },
];

export const answerLines: readonly Line[] = answer([
  // What the trial comes to: the powders, by their repeated runs.
  ...sentence('Pressure rise', (at) => at('runs.verdict.0'), [...LOGS, 'repeats.judged'], 'powdersVerdict'),
  ...COMPARED.flatMap(({ key, what }) => sentence(`${what}, two runs`, (at) => at(`${key}Verdict`), LOGS)),
  ...sentence(
    'Best body feed',
    (at) => `ROUND(${at('best.bodyFeed.1')},0)&" g/hL with the new powder. "&${at('best.remark.1')}`,
    [...LOGS, 'trials.judged'],
    'bestFeedAnswer',
  ),
  examplesLine([logList.name, repeatList.name, feedTrialList.name]),
]);

export const verdictLines: readonly Line[] = [
  heading('How the two logged runs differ'),
  ...COMPARED.flatMap(comparison),
  gap,
];
