import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue.js';
import { cell, sentence } from './worksheet.js';

describe('STORAGELIFE', () => {
  // Gas constant 8.314462618 J/(mol K); 51.22 and 81.18 kJ/mol are reckoned from Q10 of 2 and 3 between 20 and 30 °C.
  it.each([
    [2, 51_220],
    [3, 81_180],
  ])('agrees with the activation energy that a Q10 of %d stands for between 20 and 30 °C', (q10, energy) => {
    const faster = Math.exp((energy / 8.314_462_618) * (1 / 293.15 - 1 / 303.15));
    expect(Math.abs((cell('STORAGELIFE', 10, 30, 20, q10) as number) / (10 * faster) - 1)).toBeLessThan(1e-4);
  });

  it('takes a Q10 of 2 where none is given, and refuses a blank one', () => {
    expect(cell('STORAGELIFE', 10, 30, 20, null)).toBeCloseTo(20, 12);
    expect(sentence('STORAGELIFE', 10, 30, 20, 0)).toBe(
      '#VALUE! Q10 must be from 1 to 10, but the cell is blank or 0.',
    );
  });
});

describe('WARMDAYLIFE', () => {
  it('has no factor of its own to offer', () => {
    expect(sentence('WARMDAYLIFE', 5, null)).toMatch(/^#VALUE! Factor must be .* but nothing was given\.$/);
    expect(sentence('WARMDAYLIFE', 5, 0)).toMatch(/^#VALUE! Factor must be .* but the cell is blank or 0\.$/);
  });
});

describe('METALCARRY', () => {
  it('sums over the powders, and refuses columns of unequal length', () => {
    expect(cell('METALCARRY', [100, 200], [10, 20])).toBeCloseTo(0.05, 12);
    expect(sentence('METALCARRY', [100, 200], [10])).toMatch(/must be equally long/);
  });
});

describe('functions of food law and of dust', () => {
  it.each([
    ['SULPHITECARRY', 'food law', /1169\/2011, Annex II.*\n.*27 CFR 7\.63\(b\)\(3\)/s],
    ['SULPHITELABEL', 'food law', /1169\/2011, Annex II.*\n.*27 CFR 7\.63\(b\)\(3\)/s],
    ['METALCARRY', 'food law', /21 CFR 172\.480/],
    ['DUSTAVERAGE', 'dust', /29 CFR 1910\.1000\(d\)\(1\)\(i\)/],
    ['DUSTSUM', 'dust', /29 CFR 1910\.1000\(d\)\(2\)\(i\)/],
  ] as const)('%s carries the caution on %s and names regulation and section', (id, caution, section) => {
    const declared = catalogue.find((one) => one.id === id);
    expect(declared?.cautions).toContain(caution);
    expect(declared?.sources.join('\n')).toMatch(section);
  });
});
