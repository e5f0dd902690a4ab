import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { path } from '../../.config/paths.js';
import { catalogue } from '../../src/catalogue.js';
import { type Plan, planOf, properLabel, worked } from './worked.js';

const text = readFileSync(path('docs/methods.md'), 'utf8');

/** The plan that stands in the page as a table of label and value. */
const table = /\| label \| value \|\n\| --- \| --- \|\n((?:\|.*\n)+)/.exec(text)?.[1] ?? '';
const rows = table.trim().split('\n');
const plan: Plan = Object.fromEntries(
  rows
    .map((row) => row.split('|').map((cell) => cell.trim()))
    .map(([, label, value]) => [properLabel(label!), Number(value)]),
);

const plans = new Map([['plan', plan]]);
const lines = Array.from(text.matchAll(/^```check\n([\s\S]*?)^```$/gm), ([, block]) =>
  block!.trim().split('\n'),
).flat();

/** Half of the last digit that is printed, and never more than so large a share. */
const SHARE = 0.0005;
function tolerance(printed: string): number {
  const [, , decimals = '', exponent = '0'] = /^-?(\d+)\.?(\d*)(?:e(-?\d+))?$/.exec(printed) ?? [];
  const lastDigit = 0.5 * 10 ** (Number(exponent) - decimals.length) * 1.000_001;
  return Math.min(lastDigit, SHARE * Math.abs(Number(printed)));
}

describe('the worked figures of docs/methods.md', () => {
  it('are there, and the plan among them is whole', () => {
    expect(lines.length).toBeGreaterThan(60);
    expect(rows.length).toBe(32);
  });

  for (const line of lines) {
    const [left = '', right = ''] = line.split(' = ');
    if (/^\w+$/.test(left)) plans.set(left, planOf(right, plans));
    else
      it(`hold: ${line}`, () => {
        const found = worked(left, plans);
        if (typeof found === 'number')
          expect(Math.abs(found - Number(right)), String(found)).toBeLessThan(tolerance(right));
        else expect(String(found)).toContain(right);
      });
  }
});

describe('docs/methods.md', () => {
  it('says in every section when not to trust it', () => {
    const sections = text.split(/^## /m).slice(1);
    expect(sections.length).toBeGreaterThan(10);
    expect(
      sections.filter((one) => !one.includes('**When not to trust it.**')).map((one) => one.split('\n')[0]),
    ).toEqual([]);
  });

  it('names no function that does not exist', () => {
    const named = Array.from(text.matchAll(/POWDER\.(\w+)/g), ([, id]) => id);
    expect(named.filter((id) => !catalogue.some((one) => one.id === id))).toEqual([]);
  });
});
