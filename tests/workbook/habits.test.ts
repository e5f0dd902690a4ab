import { describe, expect, it } from 'vitest';
import { dosing } from '../../src/sheets/dosing.js';
import { starterSheets } from '../../src/sheets/index.js';
import { around } from '../../taskpane/host/region.js';
import { en } from '../../taskpane/texts/en.js';
import { dateNotationOf, dayOf, readMoment } from '../../taskpane/workbook/entry/date.js';
import { readEntry } from '../../taskpane/workbook/entry/entry.js';
import { notationOf } from '../../taskpane/workbook/entry/notation.js';
import {
  kindOf,
  patternNotation,
  patternOf,
  withDecimals,
  withThousands,
} from '../../taskpane/workbook/grid/numberPattern.js';
import { filledInList, hasTitles } from '../../taskpane/workbook/grid/region.js';
import { firstShown } from '../../taskpane/workbook/grid/reveal.js';
import { meantChoice } from '../../taskpane/workbook/grid/validation.js';
import { pixelsOf, zoomFor } from '../../taskpane/workbook/grid/workbookData.js';

const read = (typed: string, locale: string) => readEntry(typed, { notation: notationOf(locale), words: en.entry });
const NOW = new Date(2026, 10, 27);

describe('dates and times that are typed', () => {
  // Day 1 is 1 January 1900 and 29 February 1900 is counted: ECMA-376 part 1, 18.17.4.1.
  it.each([
    [2026, 11, 27, 46353],
    [2000, 2, 29, 36585],
    [1900, 3, 1, 61],
    [2025, 2, 29, undefined],
    [2025, 13, 1, undefined],
  ])('are counted as worksheets do: %d-%d-%d', (year, month, day, serial) => {
    expect(dayOf(year, month, day)).toBe(serial);
  });

  it.each([
    ['de-DE', '27.11.2026', 46353, 'dd.mm.yyyy'],
    ['de-DE', '27.11.26', 46353, 'dd.mm.yyyy'],
    ['de-DE', '27.11.', 46353, 'dd.mm.yyyy'],
    ['de-DE', '27/11/2026', 46353, 'dd.mm.yyyy'],
    ['en-GB', '27/11/2026', 46353, 'dd/mm/yyyy'],
    ['en-US', '11/27/2026', 46353, 'mm/dd/yyyy'],
    ['en-US', '3/4', dayOf(2026, 3, 4), 'mm/dd/yyyy'],
    ['en-GB', '3/4', dayOf(2026, 4, 3), 'dd/mm/yyyy'],
    ['en-GB', '2026-11-27', 46353, 'yyyy-mm-dd'],
    ['de-DE', '2026-11-27T12:00:00Z', 46353.5, 'yyyy-mm-dd hh:mm:ss'],
    ['de-DE', '27.11.2026 06:00', 46353.25, 'dd.mm.yyyy hh:mm'],
    ['en-GB', '1:30', 0.0625, 'hh:mm'],
    ['en-GB', '36:00', 1.5, '[h]:mm'],
    ['en-US', '1:30 pm', 0.5625, 'hh:mm'],
  ])('are read in the order of %s: %s', (locale, typed, value, format) => {
    expect(readMoment(typed, dateNotationOf(locale), NOW)).toEqual({ value, format });
  });

  it.each(['5-10', '31/11/2026', '3.4', '27.11', '13:75', '1:2:3:4', 'LOT 3/4'])('are none in %s', (typed) => {
    for (const locale of ['de-DE', 'en-GB', 'en-US'])
      expect(readMoment(typed, dateNotationOf(locale), NOW)).toBeUndefined();
  });
});

describe('sums of money and sums that are typed', () => {
  it.each([
    ['en-GB', '€1.95', 1.95, '"€"#,##0.00;-"€"#,##0.00'],
    ['de-DE', '1,95 €', 1.95, '#,##0.00 "€"'],
    ['en-US', '$2.10', 2.1, '"$"#,##0.00;-"$"#,##0.00'],
    ['en-GB', '-€5', -5, '"€"#,##0;-"€"#,##0'],
    ['en-GB', '(500)', -500, '#,##0;(#,##0)'],
    ['en-US', '($1,234.50)', -1234.5, '"$"#,##0.00;("$"#,##0.00)'],
  ])('are numbers with their format in %s: %s', (locale, typed, value, format) => {
    expect(read(typed, locale)).toMatchObject({ kind: 'number', value, format });
  });

  it('are refused with a sentence where the decimal mark is another', () => {
    expect(read('€1,95', 'en-GB').kind).toBe('refused');
    expect(read('1.95 €', 'de-DE').kind).toBe('refused');
  });

  it.each([
    ['+450*2', '=450*2'],
    ['-(3+4)/2', '=-(3+4)/2'],
  ])('are calculated where they begin with a sign: %s', (typed, formula) => {
    expect(read(typed, 'en-GB')).toEqual({ kind: 'formula', formula });
  });

  it.each(['+49 30 1234', '+49-30-1234', '-abc', '(A-12)', '€', '() 5'])('are none in %s', (typed) => {
    expect(read(typed, 'en-GB')).toEqual({ kind: 'text' });
  });
});

describe('a choice that is typed', () => {
  it('is the one of its list, whatever spaces and capitals it was typed with', () => {
    const rule = { kind: 'list', of: ['adsorptive', 'none'], message: '' };
    expect(meantChoice(rule, ' Adsorptive ')).toBe('adsorptive');
    expect(meantChoice(rule, 'other')).toBeUndefined();
    expect(meantChoice({ kind: 'number' }, 'none')).toBeUndefined();
  });
});

describe('number formats', () => {
  it('are told by kind, also those of other programs', () => {
    const notation = patternNotation('de-DE');
    for (const kind of ['general', 'number', 'percent', 'euro', 'dollar', 'date', 'time', 'text'] as const)
      expect(kindOf(patternOf(kind, notation))).toBe(kind);
    expect(kindOf('d. mmm yy')).toBe('date');
    expect(kindOf('0.00 "days"')).toBe('number');
  });

  it.each([
    ['0', 1, '0.0'],
    ['0.0', -1, '0'],
    ['0', -1, '0'],
    ['#,##0.00 "€"', 1, '#,##0.000 "€"'],
    ['0.0 %', 1, '0.00 %'],
    ['"€"#,##0.00;-"€"#,##0.00', -1, '"€"#,##0.0;-"€"#,##0.0'],
    ['dd.mm.yyyy', 1, 'dd.mm.yyyy'],
  ] as const)('get one decimal more or less: %s %d', (pattern, change, expected) => {
    expect(withDecimals(pattern, change, 0)).toBe(expected);
  });

  it('begin from what a number without a format shows', () => {
    expect(withDecimals(undefined, 1, 2)).toBe('0.000');
    expect(withDecimals('General', -1, 2)).toBe('0.0');
  });

  it('get groups of three digits, and lose them', () => {
    expect(withThousands('0.00', true)).toBe('#,##0.00');
    expect(withThousands('#,##0.00 "€"', false)).toBe('0.00 "€"');
    expect(withThousands(undefined, true)).toBe('#,##0');
  });
});

describe('the table around a cell', () => {
  const cells = [
    ['day', 'mass', null, null],
    ['a', 1, null, 7],
    ['b', 2, null, null],
    [null, null, null, null],
    ['c', 3, null, null],
  ];
  const at = (row: number, column: number) => cells[row]?.[column] ?? null;

  it('ends at empty rows and columns, and its titles are no part of what is sorted', () => {
    const most = { top: 0, left: 0, bottom: 4, right: 3 };
    const region = around(1, 1, (row, column) => at(row, column) === null, most);
    expect(region).toEqual({ top: 0, left: 0, bottom: 2, right: 1 });
    expect(hasTitles(region, at)).toBe(true);
    expect(hasTitles({ ...region, top: 1 }, at)).toBe(false);
  });

  it('is what is filled in, where it is a list that formulas fill besides', () => {
    // Titles, a row of formulas, three rows, room, and the end of the list; states in A, costs in D.
    const filled = (startColumn: number) => ({ startRow: 1, endRow: 6, startColumn, endColumn: startColumn });
    const spilled = [filled(0), filled(3)];
    const region = { top: 0, left: 0, bottom: 6, right: 3 };
    const isEmpty = (row: number, column: number) => row > 4 || (column !== 1 && column !== 2);
    const of = (row: number, column: number) => filledInList({ row, column }, region, spilled, isEmpty);
    expect(of(3, 2)).toEqual({ top: 2, left: 1, right: 2, bottom: 4 });
    expect(of(2, 1)).toEqual({ top: 2, left: 1, right: 2, bottom: 4 });
    expect(of(3, 3)).toBeUndefined();
    expect(filledInList({ row: 3, column: 2 }, region, [], isEmpty)).toBeUndefined();
  });
});

describe('a starter sheet', () => {
  it('is drawn so that labels and figures are seen together on a telephone, and as usual where there is room', () => {
    const seen = (widths: number[], room: number) => {
      const zoom = zoomFor({ widths }, room);
      return (widths.slice(0, 2).reduce((sum, width) => sum + pixelsOf(width), 0) + 46) * zoom <= room;
    };
    expect(zoomFor(dosing, 1280)).toBe(1);
    expect(zoomFor(dosing, 360)).toBeLessThan(1);
    for (const { widths } of starterSheets) expect(seen([...widths], 360)).toBe(true);
  });
});

describe('a jump to a cell', () => {
  it.each([
    ['already in view', 12, 4, 10, 30, undefined],
    ['frozen', 2, 4, 10, 30, undefined],
    ['above', 6, 4, 10, 30, 4],
    ['below', 60, 4, 10, 30, 57],
    ['on the last line, which may be cut', 30, 4, 10, 30, 27],
  ])('shows it beside what is frozen: %s', (_, row, frozen, from, to, first) => {
    expect(firstShown(row, frozen, from, to, 3)).toBe(first);
  });
});
