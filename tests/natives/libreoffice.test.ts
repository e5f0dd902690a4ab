import { expect, it } from 'vitest';
import { calculateCells } from '../workbook/headless.js';
import { answers, type Value } from './answers.js';
import { CELLS } from './cases/cells.js';
import { CASES, FIRST_ROW } from './cases/index.js';
import { OTHERWISE } from './otherwise.js';

// The expected values are LibreOffice's, kept with its version; npm run exchange has it calculate them anew.

const blank = Array.from({ length: FIRST_ROW - 1 - CELLS.length }, () => []);
const rows = [
  ...CELLS.map((row) => row.map((content) => content ?? '')),
  ...blank,
  ...CASES.map(({ formula }) => [formula]),
];

const isError = (value: unknown): boolean => typeof value === 'string' && value.startsWith('#');

/** Which error it is differs: LibreOffice has more kinds than a file can hold and writes most of them as #VALUE!. */
function same(found: unknown, expected: Value): boolean {
  if (typeof found !== 'number' || typeof expected !== 'number')
    return found === expected || (isError(found) && isError(expected));
  return Math.abs(found - expected) <= 1e-9 * Math.max(Math.abs(expected), 1e-3);
}

it('calculates every native function as LibreOffice does, but for what is listed with its reason', async () => {
  const calculated = await calculateCells(rows);
  const found = CASES.map(({ formula }, n) => ({ formula, value: calculated.at(`A${FIRST_ROW + n}`).value ?? '' }));
  calculated.dispose();
  const wrong = found.filter(({ formula, value }) => {
    const listed = OTHERWISE[formula];
    return (
      !same(value, listed ? listed.grid : answers.values[formula]!) || (listed && same(value, answers.values[formula]!))
    );
  });
  expect(wrong.map(({ formula, value }) => `${formula} ${value} / ${answers.values[formula]}`)).toEqual([]);
}, 60_000);
