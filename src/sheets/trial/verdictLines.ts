import { fitRun } from '../../cake/fitRun.js';
import type { Unit } from '../../core/units.js';
import { text } from '../cells.js';
import { type At, answer, gap, heading, type Line } from '../layout.js';
import { computed } from './lines.js';

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

/** Differences of fewer standard errors than this are taken for noise. */
const CLEAR = 2;

const verdict = (at: At, { key, less, more }: Compared): string => {
  const share = (of: string, times: number) => `ROUND(${times * 100}*${of}/${at(`fit.${key}.0`)},1)`;
  const said = `IF(${at(`${key}Difference`)}<0,"${less}","${more}")`;
  const size = `${share(`ABS(${at(`${key}Difference`)})`, 1)}&" %, give or take "&${share(at(`${key}Uncertainty`), CLEAR)}`;
  return `=IF(${at(`${key}Ratio`)}<${CLEAR},"These logs cannot tell the two apart from noise.",${said}&" by "&${size}&" % (two standard errors).")`;
};

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
      ['', `${key}Uncertainty`],
      'Standard error of the difference',
      (at) => `=SQRT(${at(`fit.${key}Error.0`)}^2+${at(`fit.${key}Error.1`)}^2)`,
      unit,
      'root of the sum of the squares of both standard errors: the runs are independent',
      digits,
    ),
    computed(
      ['', `${key}Ratio`],
      'Difference in standard errors',
      (at) => `=ABS(${at(`${key}Difference`)})/${at(`${key}Uncertainty`)}`,
      '',
      `below ${CLEAR} it may well be noise`,
      1,
    ),
    computed(
      ['', `${key}Chance`],
      'Chance that noise alone makes as much',
      (at) => `=2*(1-NORM.S.DIST(${at(`${key}Ratio`)},TRUE))`,
      'fraction',
      'normal distribution, both sides; too small where readings lie close together',
    ),
    {
      marks: { [`${key}Verdict`]: { column: 1 } },
      cells: (at) => [text('Verdict', 'label'), { formula: verdict(at, compared), style: 'heading' }],
    },
  ];
};

/** What to dose next, and what the report of the best feed has to say of it. */
const bestFeedAnswer: Line = {
  cells: (at) => [
    text('Best body feed', 'label'),
    {
      formula: `=ROUND(${at('best.bodyFeed.1')},0)&" g/hL with the new powder. "&${at('best.remark.1')}`,
      style: 'heading',
    },
  ],
};

export const answerLines: readonly Line[] = answer([
  ...COMPARED.map(
    ({ key, what }): Line => ({
      cells: (at) => [text(what, 'label'), { formula: `=${at(`${key}Verdict`)}`, style: 'heading' }],
    }),
  ),
  bestFeedAnswer,
]);

export const verdictLines: readonly Line[] = [
  heading('Verdict on the new powder'),
  ...COMPARED.flatMap(comparison),
  gap,
];
