import { fitRun } from '../../cake/fitRun.js';
import { riseRate } from '../../cake/riseRate.js';
import { declaredInput, inputCell, spilled, text, unitOf } from '../cells.js';
import { judgement } from '../formula.js';
import { type At, gap, type Line, type Mark, note, titles, units } from '../layout.js';
import { fittedAt } from './fitLines.js';
import { NEW_LOG, OLD_LOG } from './logs.js';

/** Readings that a log has room for. */
export const ROOM = 80;

const HOURS = declaredInput(riseRate, 'hours');
const READ = [HOURS, declaredInput(fitRun, 'volumes'), declaredInput(fitRun, 'bars')] as const;
const FED = [riseRate, fitRun, fitRun] as const;
const DIGITS = [2, 0, 2] as const;
const SIDES = ['old', 'new'] as const;
const KEYS = ['Hours', 'Volumes', 'Bars'] as const;

/** Right of the source column, so that a log's own columns stay together. */
const FIT_COLUMN = 7;
const JUDGED_COLUMN = FIT_COLUMN + SIDES.length;
const judged = [
  { cells: { column: 0, rows: ROOM, columns: SIDES.length * KEYS.length }, by: { column: JUDGED_COLUMN } },
];

const marks: Readonly<Record<string, Mark>> = Object.fromEntries([
  ...SIDES.flatMap((side, which) =>
    KEYS.map((key, index): [string, Mark] => [`${side}${key}`, { column: 3 * which + index, rows: ROOM }]),
  ),
  ...SIDES.map((side, which): [string, Mark] => [`${side}Fit`, { column: FIT_COLUMN + which, rows: ROOM }]),
]);

/** The fitted line at each reading; nothing where there is none. */
const fitted = (at: At, side: string, which: 0 | 1): string =>
  `=IF(LEN(${at(`${side}Bars`)})=0,"",${fittedAt(at, which, at(`${side}Volumes`))})`;

const reading = (row: number): Line => ({
  ...(row === 0 ? { marks, judged } : {}),
  cells: (at) => [
    ...[OLD_LOG[row], NEW_LOG[row]].flatMap((log) =>
      READ.map((declared, index) => inputCell(declared, log?.[index], DIGITS[index])),
    ),
    text('', 'note'),
    ...SIDES.map((side, which) => ({
      ...spilled('bar'),
      ...(row === 0 ? { formula: fitted(at, side, which === 0 ? 0 : 1) } : {}),
    })),
    ...SIDES.flatMap((side) =>
      KEYS.map((key, index) => ({
        style: 'note' as const,
        ...(row === 0
          ? { formula: judgement(at(`${side}${key}`), FED[index] ?? fitRun, `${READ[index]?.label}`) }
          : {}),
      })),
    ),
  ],
});

const headed = (index: number) => `${KEYS[index] === 'Bars' ? 'Pressure drop' : READ[index]?.label}`;

const columnHeads = SIDES.flatMap((side) => KEYS.map((_, index) => `${headed(index)}, ${side}`));
const judgedHeads = ['Old', 'New'].flatMap((side) => READ.map((declared) => `${side}, ${unitOf(declared)}`));
const columnUnits = SIDES.flatMap(() => READ.map(unitOf));

export const logLines: readonly Line[] = [
  note('These two are calculated by the functions’ own physics, with noise on every reading.'),
  note('Paste into the framed columns, without gaps; what stands below the last reading stays empty.'),
  titles([...columnHeads, '', 'Fit, old', 'Fit, new', ...judgedHeads], [0, JUDGED_COLUMN]),
  units([...columnUnits, '', 'bar', 'bar', ...judgedHeads.map(() => 'judged')], [0, JUDGED_COLUMN]),
  ...Array.from({ length: ROOM }, (_, row) => reading(row)),
  gap,
];
