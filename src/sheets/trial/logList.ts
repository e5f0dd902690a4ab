import { fitRun } from '../../cake/fitRun.js';
import { riseRate } from '../../cake/riseRate.js';
import { ABOVE, judgementOf, namedIn, placesOf, rowsOf, UPPER, upperRowsOf } from '../block.js';
import { declaredInput } from '../cells.js';
import { isOfExample } from '../examples.js';
import type { At } from '../layout.js';
import type { Block } from '../list.js';
import { ofWholeColumn } from '../listState.js';
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

/** The first reading stands so many rows below the title. */
const FIRST = 2;

/** The fitted line at each reading; a volume of 0 stands in where there is none, so that none is refused. */
const fitOf = (column: (key: string) => string, at: At, which: 0 | 1): string => {
  const [volumes, bars] = ['Volumes', 'Bars'].map((key) => column(`${SIDES[which]}${key}`));
  return `IF(ISNUMBER(${bars}),${fittedAt(at, which, `IF(ISNUMBER(${volumes}),${volumes},0)`)},"")`;
};

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
    formula: (column: (key: string) => string, at: At) => fitOf(column, at, which),
  })),
  examples: OLD_LOG.map((log, row) => ({ ...readings(log, 'old'), ...readings(NEW_LOG[row], 'new') })),
  told: SIDES.map(readingKeys),
  rules: (column) =>
    SIDES.flatMap((run) => {
      const keys = readingKeys(run);
      const hours = keys[0] as string;
      const above = column(`${hours}${ABOVE}`);
      return [
        [
          'refused',
          `ISNUMBER(${column(hours)})*ISNUMBER(${above})*(${column(hours)}<${above})`,
          hours,
          'goes back: another log begins here, or the rows are not in order.',
        ] as const,
      ];
    }),
};

/** Rows among which readings of the example are looked for: more than it has, and few enough to be quick. */
const UPPER_ROWS = 200;

/** The places by which the readings are found: from the first of them on, and from their units on. */
export const readingPlaces = { 'log.first': { column: 1 }, ...rowsOf(logList) };
export const upperPlaces = upperRowsOf(logList, UPPER_ROWS);

/** How many figures of a run are the example’s; those with a source are somebody’s own. */
export function examplesOf(at: At, run: Run): string {
  const column = (key: string) => at(`${logList.name}.${key}${UPPER}`);
  const keys = readingKeys(run);
  return `${keys.length}*SUM((LEN(${column('source')})=0)*${isOfExample(logList, keys, column)})`;
}

/** So few readings are the example’s by chance, or are its own with another figure tried. */
const FEW = 2;
const LAST = 9e307;

/** Whether some readings of a run are the example’s and others are not: as where a shorter log was pasted over it. */
function isMixed(at: At, run: Run): Step {
  const column = placesOf(logList, at);
  const keys = readingKeys(run);
  const hours = column(keys[0] as string);
  const last = isOfExample(logList, keys, (key) => `LOOKUP(${LAST},${column(key)})`);
  const [count, all] = [`${at(`${run}Examples`)}/${keys.length}`, at(`${run}Readings`)];
  const lastRow = `MIN(ROW(${hours}))-1+IF(${last},MATCH(${LAST},${hours}),${FIRST})`;
  const words = `"refused: "&ADDRESS(${lastRow},COLUMN(${hours}),4)&" and others, "&${count}&" of "&${all}&", are still the example’s: two logs are mixed."`;
  return (rest) => `IF(IFERROR((${all}-${count}>${FEW})*((${count}>${FEW})+${last})>0,FALSE),${words},${rest})`;
}

/** The judgement of one run’s log. */
export function logJudgement(at: At, run: Run): string {
  const column = placesOf(logList, at);
  const keys = readingKeys(run);
  const hours = column(keys[0] as string);
  const own = logList.given.filter(({ key }) => keys.includes(key));
  const whole = (look: 'refused' | 'unusual') => own.map((one) => ofWholeColumn(look, column(one.key), one));
  return judgementOf(logList, at, [
    (rest) => `IF(${at(`${run}Readings`)}=0,${namedIn(hours, 1, `is empty: no reading of the ${run} run.`)},${rest})`,
    ...whole('refused'),
    isMixed(at, run),
    ...whole('unusual'),
  ]);
}

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
