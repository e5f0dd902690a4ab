import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { path } from '../../.config/paths.js';
import { catalogue } from '../../src/catalogue.js';
import { CHECKS } from './all.js';
import { answerTo, halfStep, titleOf } from './check.js';
import { PUBLICATIONS, publicationOf } from './publications.js';
import { WITHOUT_CHECK } from './without.js';

describe('a figure from outside', () => {
  it.each(CHECKS.map((check) => [titleOf(check), check] as const))('%s', (_, check) => {
    const answer = answerTo(check);
    if (typeof check.expected === 'string') return expect(answer).toBe(check.expected);
    expect(answer, String(answer)).toBeTypeOf('number');
    expect(Math.abs((answer as number) - check.expected)).toBeLessThanOrEqual(
      check.tolerance * Math.abs(check.expected),
    );
  });
});

describe('the published checks', () => {
  const published = CHECKS.filter((check) => publicationOf(check) !== undefined);

  it('are at least 120 from at least 25 publications, each of which is used', () => {
    expect(published.length).toBeGreaterThanOrEqual(120);
    const used = new Set(published.map(publicationOf));
    expect(used.size).toBeGreaterThanOrEqual(25);
    expect([...used].sort()).toEqual(PUBLICATIONS.map(([title]) => title).sort());
  });

  it('name a publication wherever they say that the figure is printed, but for definitions of units', () => {
    const nameless = CHECKS.filter((check) => check.kind !== 'derived' && publicationOf(check) === undefined);
    for (const { source } of nameless) expect(source).toMatch(/^definition of /);
  });

  it('have a tolerance of half a step of the printed digit, or say why it is wider', () => {
    const silent = published.filter(({ expected, tolerance, wider }) => {
      if (typeof expected !== 'number' || wider !== undefined) return false;
      // More digits than anyone prints were reckoned on the way.
      return Number(expected.toPrecision(7)) === expected && tolerance > 2.1 * halfStep(expected);
    });
    expect(silent.map(titleOf)).toEqual([]);
  });

  it('are each made once', () => {
    const titles = CHECKS.map(titleOf);
    const again = titles.filter((title, place) => titles.indexOf(title) !== place);
    expect(again).toEqual([]);
  });

  it('hold every function, or it says why not and what stands in, in tests that exist', () => {
    const without = WITHOUT_CHECK.flatMap(({ functions }) => functions);
    const held = [...new Set(published.map(({ calculation }) => calculation))];
    expect(held.length).toBeGreaterThanOrEqual(55);
    expect([...held, ...without].sort()).toEqual(catalogue.map(({ id }) => id).sort());
    for (const { tests } of WITHOUT_CHECK) {
      expect(tests.length).toBeGreaterThan(0);
      for (const name of tests) expect(existsSync(path(name)), name).toBe(true);
    }
  });
});
