import { fitRun } from '../../cake/fitRun.js';
import { riseRate } from '../../cake/riseRate.js';
import { ABOVE, judgementOf, namedIn, placesOf } from '../block.js';
import { declaredInput } from '../cells.js';
import { isOfExample } from '../examples.js';
import type { At } from '../layout.js';
import type { Block } from '../list.js';
import { quotedText, type Step } from '../verdict.js';
import { BOTH, fittedAt, type Run, SIDES } from './fitted.js';
import { NEW_LOG, OLD_LOG } from './logs.js';

/** Readings that the list has room for: a run of 16 hours, read every half minute. */
const ROOM = 2000;

const READ = [
  { key: 'Hours', label: 'Hours', declared: declaredInput(riseRate, 'hours'), digits: 2 },
  { key: 'Volumes', label: 'Volume', declared: declaredInput(fitRun, 'volumes'), digits: 0 },
  { key: 'Bars', label: 'Pressure', declared: declaredInput(fitRun, 'bars'), digits: 2 },
] as const;

/** The columns of one run’s readings. */
export const readingKeys = (run: Run): readonly string[] => READ.map(({ key }) => `${run}${key}`);

const readings = (log: readonly number[] | undefined, run: Run) =>
  Object.fromEntries(readingKeys(run).map((key, index) => [key, log?.[index]]));

const isLaid = (column: (key: string) => string, keys: readonly string[]) => `LEN(${keys.map(column).join('&')})>0`;

/** The readings of two runs, one of each in a row; the fits read them in any order. */
export const logList: Block = {
  name: 'log',
  what: 'reading',
  room: ROOM,
  isLong: true,
  given: SIDES.flatMap((run) =>
    READ.map(({ key, label, declared, digits }) => ({
      key: `${run}${key}`,
      label: `${label}, ${run}`,
      declared,
      digits,
      mayBeBlank: true,
    })),
  ),
  calculated: BOTH.map((which) => ({
    key: `${SIDES[which]}Fit`,
    label: `Fit, ${SIDES[which]}`,
    unit: 'bar' as const,
    formula: (column: (key: string) => string, at: At) =>
      `IF(ISNUMBER(${column(`${SIDES[which]}Bars`)}),${fittedAt(at, which, column(`${SIDES[which]}Volumes`))},"")`,
  })),
  examples: OLD_LOG.map((log, row) => ({ ...readings(log, 'old'), ...readings(NEW_LOG[row], 'new') })),
  told: SIDES.map(readingKeys),
  rules: (column) =>
    SIDES.flatMap((run) => {
      const keys = readingKeys(run);
      const hours = keys[0] as string;
      const above = column(`${hours}${ABOVE}`);
      return [
        ...READ.map(
          ({ label }, index) =>
            [
              'refused',
              `(LEN(${column(keys[index] as string)})=0)*(${isLaid(column, keys)})`,
              keys[index] as string,
              `${label}, ${run} is missing: a reading has all three figures, or none.`,
            ] as const,
        ),
        [
          'refused',
          `ISNUMBER(${column(hours)})*ISNUMBER(${above})*(${column(hours)}<${above})`,
          hours,
          'goes back: another log begins here, or the rows are not in order.',
        ] as const,
      ];
    }),
};

/** So few readings are the example’s by chance, or are its own with another figure tried. */
const FEW = 2;
const LAST = 9e307;

/** Whether some readings of a run are the example’s and others are not: as where a shorter log was pasted over it. */
function isMixed(at: At, run: Run): Step {
  const column = placesOf(logList, at);
  const keys = readingKeys(run);
  const hours = column(keys[0] as string);
  const rows = `(LEN(${column('source')})=0)*${isOfExample(logList, keys, column)}`;
  const last = isOfExample(logList, keys, (key) => `LOOKUP(${LAST},${column(key)})`);
  const [count, all] = [`SUM(${rows})`, `COUNT(${hours})`];
  const first = `ADDRESS(INDEX(ROW(${hours}),MATCH(1,${rows},0)),COLUMN(${hours}),4)`;
  const words = `"refused: "&${first}&" is still the example’s, as are "&${count}&" of "&${all}&" readings: two logs are mixed."`;
  return (rest) => `IF(IFERROR((${all}-${count}>${FEW})*((${count}>${FEW})+${last})>0,FALSE),${words},${rest})`;
}

/** The judgement of one run’s log. */
export const logJudgement = (at: At, run: Run): string => {
  const hours = placesOf(logList, at)(readingKeys(run)[0] as string);
  return judgementOf(logList, at, [
    (rest) => `IF(COUNT(${hours})=0,${namedIn(hours, 1, `is empty: no reading of the ${run} run.`)},${rest})`,
    isMixed(at, run),
  ]);
};

/** How far the flow may lie from what the log gives before it is asked about, and before it is refused. */
const [ODD, WRONG] = [0.03, 0.1];

/** The flow that somebody enters must be that of hours and volumes. */
export function flowOfLog(at: At, name: string): readonly Step[] {
  const run = SIDES.find((side) => name.startsWith(side)) as Run;
  const column = placesOf(logList, at);
  const [hours, volumes] = readingKeys(run).map(column) as [string, string];
  const spread = (range: string) => `(MAX(${range})-MIN(${range}))`;
  const logged = `${spread(volumes)}/${spread(hours)}`;
  const cell = at(name);
  const off = (most: number) => `IFERROR(ABS(${cell}/(${logged})-1)>${most},FALSE)`;
  const words = (look: string) =>
    `"${look}: "&ADDRESS(ROW(${cell}),COLUMN(${cell}),4)&${quotedText(' Flow is not that of the log: its hours and volumes give ')}&ROUND(${logged},0)&" hL/h."`;
  return [(rest) => `IF(${off(WRONG)},${words('refused')},IF(${off(ODD)},${words('unusual')},${rest}))`];
}
