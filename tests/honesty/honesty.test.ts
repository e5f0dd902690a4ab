import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { path } from '../../.config/paths.js';
import { CLAIMS } from './claims.js';
import { tally } from './page.js';

/** Few cases and always the same: enough to see a claim that holds half the time. `npm run coverage` has many. */
const CASES = 60;
/** Four standard deviations of 60 cases below the least that 2,000 cases must show. */
const SLACK = 0.13;

describe('what a function states of its own certainty', () => {
  it.each(CLAIMS.map((claim) => [`${claim.id}, ${claim.made}, ${claim.noise}`, claim] as const))(
    'holds: %s',
    (_, claim) => {
      const tallies = tally(claim, CASES);
      expect(tallies.length).toBeGreaterThan(0);
      for (const { figure, held, unknown } of tallies) {
        if (held === undefined) expect(unknown, figure).toBe(1);
        else expect(held, figure).toBeGreaterThan(1 - 2 * (1 - claim.claimed) - SLACK);
      }
    },
    60_000,
  );

  it('stands in the committed page line by line, none of it not held', () => {
    const page = existsSync(path('docs/honesty.md')) ? readFileSync(path('docs/honesty.md'), 'utf8') : '';
    for (const { made, noise } of CLAIMS) expect(page).toContain(` | ${made} | ${noise} | `);
    for (const { id } of CLAIMS) expect(page).toContain(`| ${id} | `);
    expect(page).not.toContain('NOT HELD');
  });
});
