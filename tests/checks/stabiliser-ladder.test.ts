import { describe, expect, it } from 'vitest';
import { call, cell, sentence } from './worksheet.js';

const DOSES = [0, 20, 40, 60];
const HAZES = [9, 5, 3, 2];

describe('LADDERFIT', () => {
  it('reports in rows whose labels carry the unit', () => {
    const labels = (call('LADDERFIT', DOSES, HAZES) as string[][]).map(([label]) => label);
    expect(labels).toEqual([
      'Haze without dose EBC',
      'Haze without dose, standard error EBC',
      'Plateau EBC',
      'Plateau, standard error EBC',
      'Rate per g/hL',
      'Rate, standard error per g/hL',
      'Residual EBC',
      'R²',
      'Largest dose tried g/hL',
      'Standard errors in 95 %',
      'Dose for the target g/hL',
      'Dose for the target, 95 % from g/hL',
      'Dose for the target, 95 % to g/hL',
      'Remark',
    ]);
  });

  it('names the largest dose tried wherever it stands', () => {
    const rows = call('LADDERFIT', [60, 0, 40, 20], [2, 9, 3, 5]) as [string, number][];
    expect(rows.find(([label]) => label === 'Largest dose tried g/hL')?.[1]).toBe(60);
  });

  it('passes over blank pairs at the end of the range, however the host hands them over', () => {
    const whole = call('LADDERFIT', DOSES, HAZES);
    for (const blank of [null, 0, '']) {
      expect(call('LADDERFIT', [...DOSES, blank, blank], [...HAZES, blank, blank])).toEqual(whole);
    }
  });

  it.each([
    ['text', [9, 5, 3, 'two'], /^#VALUE! Hazes, row 4, is text, not a number: "two"/],
    ['a blank', [9, null, 3, 2], /^#VALUE! Hazes, row 2, is blank/],
    ['a blank that the host made 0', [9, 0, 3, 2], /^#VALUE! Hazes, row 2, must be from 0.001 to 1000 EBC/],
    ['an unequal length', [9, 5, 3], /^#VALUE! Hazes and Doses must be equally long, but Hazes has 3 rows and Doses 4/],
  ])('refuses %s by name and place', (_, hazes, message) => {
    expect(sentence('LADDERFIT', DOSES, hazes)).toMatch(message);
  });

  it('refuses too few points', () => {
    expect(sentence('LADDERFIT', [0, 20, 40], [9, 5, 3])).toMatch(
      /^#VALUE! Doses needs at least 4 rows.*but 3 were given/,
    );
  });

  it.each([1e-310, 1e-100, 1e-15])('ends its search where doses stand %d g/hL apart', (near) => {
    expect(sentence('LADDERFIT', [0, near, 40, 60], [9, 5, 3, 2])).toMatch(/^#N\/A /);
    expect(sentence('LADDERDOSE', [0, near, 40, 60], [9, 5, 3, 2], 3)).toMatch(/^#N\/A /);
  });

  it('refuses a repeated dose by both its rows', () => {
    expect(sentence('LADDERFIT', [0, 20, 40, 20, 60], [9, 5, 3, 5.2, 2])).toMatch(
      /^#VALUE! Doses, row 4, repeats row 2: 20 g\/hL\./,
    );
  });

  it.each([
    ['flat', [2, 2, 2, 2], /^#N\/A The data hold no effect that can be told from chance/],
    ['rising', [1, 2, 3, 4], /^#N\/A The data hold no effect: the hazes rise with the dose\./],
    ['straight', [9, 7, 5, 3], /^#N\/A The data hold no plateau/],
    ['down at once', [9, 1, 1, 1], /^#N\/A The data hold no rate/],
  ])('gives no number but the reason where the hazes are %s', (_, hazes, message) => {
    expect(sentence('LADDERFIT', DOSES, hazes)).toMatch(message);
    expect(sentence('LADDERDOSE', DOSES, hazes, 3)).toMatch(message);
  });
});

describe('LADDERDOSE', () => {
  it('gives the doses of the ladder back for its own hazes', () => {
    const doses = call('LADDERDOSE', DOSES, HAZES, HAZES.slice(1)) as [number][];
    for (const [row, [dose]] of doses.entries()) expect(dose).toBeCloseTo(DOSES[row + 1] as number, 9);
  });

  it('needs no dose for a target that the beer already meets', () => {
    expect(cell('LADDERDOSE', DOSES, HAZES, 9.5)).toBe(0);
  });

  it('goes beyond the largest dose where the curve still falls', () => {
    expect(cell('LADDERDOSE', DOSES, HAZES, 1.5)).toBeCloseTo(80, 9);
  });

  it('says why where the target lies so near the plateau that no dose allowed reaches it', () => {
    // The curve is 1 + 8 exp(−d ln 2 / 2000): 0.01 above the plateau takes 19,288 g/hL.
    const far = [0, 2000, 4000, 6000];
    expect(cell('LADDERDOSE', far, HAZES, 1.5)).toBeCloseTo(8000, 6);
    expect(sentence('LADDERDOSE', far, HAZES, 1.01)).toMatch(
      /^#N\/A No dose up to 10\u202f000 g\/hL reaches 1\.01 EBC: it lies too near the plateau/,
    );
  });

  it('says why no dose reaches a target on or below the plateau', () => {
    expect(sentence('LADDERDOSE', DOSES, HAZES, 0.5)).toBe(
      '#N/A No dose reaches 0.5 EBC: the plateau of the fitted curve is 1 EBC.',
    );
  });
});
