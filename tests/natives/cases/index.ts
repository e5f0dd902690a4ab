import { arrays } from './arrays.js';
import { bonds } from './bonds.js';
import type { Family } from './case.js';
import { complex } from './complex.js';
import { database } from './database.js';
import { dates } from './dates.js';
import { engineering } from './engineering.js';
import { finance } from './finance.js';
import { logic } from './logic.js';
import { mathematics } from './mathematics.js';
import { statistics } from './statistics.js';
import { texts } from './texts.js';

const FAMILIES: readonly Family[] = [
  ...[mathematics, statistics, dates, finance, bonds],
  ...[texts, logic, engineering, complex, database],
];

export interface Case {
  readonly name: string;
  /** From the equals sign on. */
  readonly formula: string;
  readonly rows: number;
  readonly columns: number;
}

/** Every case of every function that both the grid and LibreOffice calculate. */
export const CASES: readonly Case[] = FAMILIES.flatMap((family) =>
  Object.entries(family).flatMap(([name, all]) =>
    all.map((given) => ({ name, formula: `=${name}(${given})`, rows: 1, columns: 1 })),
  ),
).concat(
  Object.entries(arrays).flatMap(([name, all]) =>
    all.map(([given, rows, columns]) => ({ name, formula: `=${name}(${given})`, rows, columns })),
  ),
);

const FIRST_ROW = 11;

/** The row of each case in column A: one below the other, the answers of several rows as well. */
export const ROWS: readonly number[] = CASES.reduce<{ readonly at: number[]; readonly next: number }>(
  ({ at, next }, { rows }) => ({ at: [...at, next], next: next + rows }),
  { at: [], next: FIRST_ROW },
).at;
