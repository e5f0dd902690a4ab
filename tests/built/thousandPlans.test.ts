import { execFileSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { root } from '../../.config/paths.js';

describe('the example that calculates a thousand plans', () => {
  it('answers every plan, and gives a murkier beer more body feed, a shorter run and a dearer hectolitre', () => {
    const output = execFileSync(process.execPath, ['docs/thousandPlans.mjs'], { cwd: root, encoding: 'utf8' });
    const lines = output.trim().split('\n');
    expect(lines.at(-1)).toMatch(/^1000 plans, 1000 with an answer, in \d+ ms$/);
    const rows = lines.slice(1, -1).map((line) => line.split(' | '));
    expect(rows.length).toBe(10);
    const column = (index: number) => rows.map((cells) => Number(cells[index]));
    const sorted = (values: number[]) => values.toSorted((one, other) => one - other);
    for (const index of [0, 1, 5]) expect(column(index)).toEqual(sorted(column(index)));
    expect(column(3)).toEqual(sorted(column(3)).reverse());
    expect(
      rows.filter(([, , limit, , end]) => !(Number(limit) > 0.6) || !/^(pressure|cake space)/.test(end ?? '')),
    ).toEqual([]);
  });
});
