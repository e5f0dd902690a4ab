import { linearRegression } from 'simple-statistics';
import { type Bound, column } from './builtFunctions.js';
import type { Comparison } from './timing.js';

const ROWS = 100_000;

/** An invented run log with a little noise. */
const noise = (row: number): number => 0.01 * Math.sin(12.9898 * row);

export function fits(fn: (id: string) => Bound): Comparison[] {
  const fitRun = fn('FITRUN');
  const volumes = column(ROWS, (row) => 0.02 * (row + 1));
  const pressures = column(ROWS, (row) => 0.6 + 0.000_03 * row + noise(row));
  const paired = () => linearRegression(volumes.map((row, index) => [row[0]!, pressures[index]![0]!]));
  return [
    {
      title: 'FITRUN, 100,000 rows',
      reference: 'simple-statistics linearRegression, pairing counted',
      aim: 1.5,
      bare: paired,
      work: () => fitRun(volumes, pressures, [[50]], [[250]], [[2.8]], [[135]], {}),
    },
    {
      title: 'RISERATE, 100,000 rows',
      reference: 'the same (all pairs would be 5 thousand million slopes)',
      bare: paired,
      work: () => fn('RISERATE')(volumes, pressures, {}),
    },
  ];
}
