import { expect, it } from 'vitest';
import { calculateCells } from '../workbook/headless.js';
import { answers, type Single, type Value } from './answers.js';
import { CELLS } from './cases/cells.js';
import { CASES, ROWS } from './cases/index.js';
import { OTHERWISE } from './otherwise.js';

// The expected values are LibreOffice's, kept with its version; npm run exchange has it calculate them anew.

const rows: (string | number)[][] = CELLS.map((row) => row.map((content) => content ?? ''));
for (const [n, { formula }] of CASES.entries()) rows[ROWS[n]! - 1] = [formula];
const sheet = Array.from(rows, (row) => row ?? []);

const isError = (value: unknown): boolean => typeof value === 'string' && value.startsWith('#');

/** The two parts of a complex number that is written as a text. */
function partsOf(text: string): readonly [number, number] | undefined {
  const [, real = '', imaginary] =
    /^([+-]?[\d.]+(?:E[+-]?\d+)?(?![\d.]*[ij]))?(?:([+-]?[\d.]*(?:E[+-]?\d+)?)[ij])?$/i.exec(text) ?? [];
  const one = (digits: string) => (/^[+-]?$/.test(digits) ? Number(`${digits}1`) : Number(digits));
  return text.match(/[ij]$/) ? [Number(real), one(imaginary ?? '')] : undefined;
}

const near = (found: number, expected: number): boolean =>
  Math.abs(found - expected) <= 1e-9 * Math.max(Math.abs(expected), 1e-3);

/** LibreOffice has more kinds of errors than a file can hold, and writes those that it alone has as #VALUE!. */
function sameSingle(found: unknown, expected: Single): boolean {
  if (typeof found === 'number' && typeof expected === 'number') return near(found, expected);
  if (typeof found === 'string' && typeof expected === 'string') {
    const [one, other] = [partsOf(found), partsOf(expected)];
    if (one && other) return near(one[0], other[0]) && near(one[1], other[1]);
  }
  return found === expected || (isError(found) && expected === '#VALUE!');
}

const same = (found: Value, expected: Value): boolean =>
  Array.isArray(found) && Array.isArray(expected)
    ? found.every((row, r) => row.every((one: Single, c: number) => sameSingle(one, expected[r]?.[c] ?? '')))
    : sameSingle(found, expected as Single);

it('calculates every native function as LibreOffice does, but for what is listed with its reason', async () => {
  const calculated = await calculateCells(sheet);
  const at = (row: number, column: number): Single =>
    (calculated.at(`${String.fromCharCode(65 + column)}${row}`).value ?? '') as Single;
  const found = CASES.map(({ formula, rows: height, columns }, n) => {
    const row = ROWS[n]!;
    const all = Array.from({ length: height }, (_, r) => Array.from({ length: columns }, (__, c) => at(row + r, c)));
    return { formula, value: height * columns === 1 ? all[0]![0]! : all };
  });
  calculated.dispose();
  const wrong = found.filter(({ formula, value }) => {
    const listed = OTHERWISE[formula];
    return (
      !same(value, listed ? listed.grid : answers.values[formula]!) || (listed && same(value, answers.values[formula]!))
    );
  });
  expect(
    wrong.map(
      ({ formula, value }) => `${formula} ${JSON.stringify(value)} / ${JSON.stringify(answers.values[formula])}`,
    ),
  ).toEqual([]);
}, 60_000);
