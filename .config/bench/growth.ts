import { table } from '../scripts/table.js';
import { type Bound, column } from './builtFunctions.js';
import { shownTime } from './table.js';
import { leastTime } from './timing.js';

const ROWS = [1_000, 10_000, 100_000, 1_000_000];

/** An invented run log with a little noise. */
const pressure = (row: number): number => 0.6 + 3.9e-6 * row + 0.01 * Math.sin(12.9898 * row);

type Work = (fn: (id: string) => Bound, rows: number) => () => unknown;

const WORKS: Readonly<Record<string, Work>> = {
  'DRYMASS, one moisture': (fn, rows) => {
    const masses = column(rows, (row) => 10 + (row % 997));
    return () => fn('DRYMASS')(masses, [[0.65]], {});
  },
  'DRYMASS, two columns': (fn, rows) => {
    const masses = column(rows, (row) => 10 + (row % 997));
    const moistures = column(rows, (row) => (row % 89) / 100);
    return () => fn('DRYMASS')(masses, moistures, {});
  },
  'DRYMASS, all rows refused alike': (fn, rows) => {
    const masses = column(rows, (row) => 10 + (row % 997));
    const percentages = column(rows, () => 65);
    return () => fn('DRYMASS')(masses, percentages, {});
  },
  'SWAPDOSE, a column of doses': (fn, rows) => {
    const doses = column(rows, (row) => 20 + (row % 60));
    return () => fn('SWAPDOSE')(doses, [['hydrogel']], [['adsorptive']], null, null, {});
  },
  FITRUN: (fn, rows) => {
    const volumes = column(rows, (row) => 0.02 * (row + 1));
    const pressures = column(rows, pressure);
    return () => fn('FITRUN')(volumes, pressures, [[50]], [[250]], [[2.8]], [[135]], {});
  },
  RISERATE: (fn, rows) => {
    const volumes = column(rows, (row) => 0.02 * (row + 1));
    const pressures = column(rows, pressure);
    return () => fn('RISERATE')(volumes, pressures, {});
  },
};

/** The work must have been done: one error in the place of an answer would look quick. */
function checked(name: string, work: () => unknown): () => unknown {
  if (!Array.isArray(work())) throw new Error(`${name} answers with an error: there is nothing to time.`);
  return work;
}

/** How the time grows from a thousand to a million rows: 1.0 in the last column is in proportion to the rows. */
export function growth(fn: (id: string) => Bound): string {
  const rows = Object.entries(WORKS).map(([name, work]) => {
    const times = ROWS.map((count) => leastTime(checked(name, work(fn, count)), 1, count > 100_000 ? 5 : 15));
    const power = Math.log10(times.at(-1)! / times[1]!) / Math.log10(ROWS.at(-1)! / ROWS[1]!);
    return [name, ...times.map(shownTime), power.toFixed(2)];
  });
  return table(['work', ...ROWS.map((count) => `${count.toLocaleString('en')} rows`), 'power of the rows'], rows);
}
