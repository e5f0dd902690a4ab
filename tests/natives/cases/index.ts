import type { Family } from './case.js';
import { dates } from './dates.js';
import { engineering } from './engineering.js';
import { finance } from './finance.js';
import { logic } from './logic.js';
import { mathematics } from './mathematics.js';
import { statistics } from './statistics.js';
import { texts } from './texts.js';

const FAMILIES: readonly Family[] = [mathematics, statistics, dates, finance, texts, logic, engineering];

export interface Case {
  readonly name: string;
  /** From the equals sign on. */
  readonly formula: string;
}

/** Every case of every function that both the grid and LibreOffice calculate. */
export const CASES: readonly Case[] = FAMILIES.flatMap((family) =>
  Object.entries(family).flatMap(([name, all]) => all.map((given) => ({ name, formula: `=${name}(${given})` }))),
);

/** The row of the first case; the others follow, in column A. */
export const FIRST_ROW = 11;
