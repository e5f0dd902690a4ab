import { type Bound, column } from './builtFunctions.js';
import { zodColumn } from './calls.js';
import type { Comparison } from './timing.js';

const ROWS = 100_000;

/** Both sides read rows of cells and make rows of cells, as the host hands them over and takes them back. */
export function columns(fn: (id: string) => Bound): Comparison[] {
  const dryMass = fn('DRYMASS');
  const masses = column(ROWS, (row) => 10 + (row % 997));
  const moistures = column(ROWS, (row) => (row % 89) / 100);
  const percentages = column(ROWS, () => 65);
  const negatives = column(ROWS, (row) => -1 - row);
  const bareOne = () => masses.map((row) => [row[0]! * (1 - 0.65)]);
  const bareTwo = () => masses.map((row, index) => [row[0]! * (1 - moistures[index]![0]!)]);
  const reference = 'bare arithmetic over the same cells';
  return [
    {
      title: 'DRYMASS, 100,000 rows, one moisture',
      reference,
      aim: 2,
      bare: bareOne,
      work: () => dryMass(masses, [[0.65]], {}),
    },
    {
      title: 'DRYMASS, 100,000 rows, two columns',
      reference,
      aim: 2,
      bare: bareTwo,
      work: () => dryMass(masses, moistures, {}),
    },
    {
      title: 'DRYMASS, 100,000 rows, two columns',
      reference: 'zod object, row by row',
      bare: zodColumn(masses, moistures),
      work: () => dryMass(masses, moistures, {}),
      rounds: 10,
    },
    {
      title: '100,000 rows refused alike',
      reference,
      aim: 20,
      bare: bareTwo,
      work: () => dryMass(masses, percentages, {}),
    },
    {
      title: '100,000 rows refused alike',
      reference: 'zod object that refuses, row by row',
      bare: zodColumn(masses, percentages),
      work: () => dryMass(masses, percentages, {}),
      rounds: 3,
    },
    {
      title: '100,000 rows, each refused with its own sentence',
      reference,
      bare: bareTwo,
      work: () => dryMass(negatives, moistures, {}),
    },
  ];
}
