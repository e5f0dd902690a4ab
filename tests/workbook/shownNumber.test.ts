import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../.config/properties.js';
import { notationOf } from '../../taskpane/workbook/entry/notation.js';
import { allDigits, measureOf, shownFormatted, shownNumber } from '../../taskpane/workbook/grid/shownNumber.js';

const [english, german] = [notationOf('en-GB'), notationOf('de-DE')];
/** The font of a cell, 11 points. */
const measure = measureOf(44 / 3);
const USUAL = 84;
const shown = (value: number, room = USUAL) => shownNumber(value, room, measure, english);

describe('a number in a cell', () => {
  it.each([
    [51, '51'],
    [29.142857142857142, '29.1428571'],
    [1 / 3, '0.33333333'],
    [-1 / 3, '-0.33333333'],
    [0.1 + 0.2, '0.3'],
    [6_666_666.6667, '6666666.67'],
    [1_234_567_890_123, '1.2346E+12'],
    [1e-10 / 3, '3.33333E-11'],
    [0, '0'],
    [1e300, '1E+300'],
  ])('shows %d with the digits for which there is room: %s', (value, text) => {
    expect(shown(value)).toBe(text);
  });

  it('has the decimal mark of the user', () => {
    expect(shownNumber(29.142857142857142, USUAL, measure, german)).toBe('29,1428571');
    expect(allDigits(0.1 + 0.2, german)).toBe('0,3');
    expect(allDigits(1_234_567_890_123.25, english)).toBe('1234567890123.25');
  });

  it('fits, and is the number to at least two digits that matter, or is no number at all', () => {
    const room = fc.integer({ min: 1, max: 300 });
    fc.assert(
      fc.property(fc.double({ noNaN: true, min: -1e307, max: 1e307 }), room, (value, pixels) => {
        const text = shown(value, pixels);
        if (/^#+$/.test(text)) return;
        expect(measure(text)).toBeLessThanOrEqual(pixels);
        const whole = text.includes('E') && !text.includes('.') ? 0.5 : 0.05;
        expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(whole * Math.abs(value));
      }),
      cases(1000),
    );
  });

  it('gives way to marks where not even one digit with its power of ten fits', () => {
    expect(shown(1_234_567, 30)).toBe('###');
    expect(shown(0.5, 1)).toBe('#');
  });

  it('is never cut off in its format', () => {
    expect(shownFormatted('12,345,678.90', 120, measure)).toBe('12,345,678.90');
    expect(shownFormatted('12,345,678.90', 60, measure)).toBe('#######');
  });

  it('takes more room in a larger font', () => {
    expect(measureOf(20)('1,234.5%')).toBeCloseTo(2 * measureOf(10)('1,234.5%'), 9);
    expect(measure('88')).toBeGreaterThan(measure('.8'));
  });
});
