import { describe, expect, it } from 'vitest';
import { en } from '../../taskpane/texts/en.js';
import { readEntry } from '../../taskpane/workbook/entry/entry.js';
import { notationOf, written } from '../../taskpane/workbook/entry/notation.js';
import { processorTime } from '../processorTime.js';

const read = (typed: string, locale: string, before?: string) =>
  readEntry(typed, { notation: notationOf(locale), words: en.entry }, before);
const value = (typed: string, locale: string) => {
  const entry = read(typed, locale);
  return entry.kind === 'number' ? entry.value : entry.kind;
};
const formula = (typed: string, locale: string, before?: string) => {
  const entry = read(typed, locale, before);
  return entry.kind === 'formula' ? entry.formula : entry.kind;
};

describe('a number typed where the decimal mark is a comma', () => {
  it.each([
    ['0,65', 0.65],
    ['1.200', 1200],
    ['1.200,5', 1200.5],
    ['1 200,5', 1200.5],
    ['-3,5', -3.5],
    ['65 %', 0.65],
    ['6,5%', 0.065],
    ['1e3', 1000],
    [',5', 0.5],
    ['1.234.567', 1234567],
  ])('is read as its language means it: %s is %d', (typed, expected) => {
    expect(value(typed, 'de-DE')).toBe(expected);
  });

  it.each(['1.2', '0.65', '1.20', '12.5 %'])('is refused where it is written with a point: %s', (typed) => {
    expect(value(typed, 'de-DE')).toBe('refused');
  });

  it('is refused with the number as it should be written', () => {
    expect(read('1.2', 'de-DE')).toMatchObject({ message: expect.stringContaining('Write 1,2 if that is meant') });
  });
});

describe('a number typed where the decimal mark is a point', () => {
  it.each([
    ['0.65', 0.65],
    ['1.200', 1.2],
    ['1,200', 1200],
    ['1,234,567.5', 1234567.5],
    ['65%', 0.65],
    ['29%', 0.29],
  ])('is read as its language means it: %s is %d', (typed, expected) => {
    expect(value(typed, 'en-GB')).toBe(expected);
  });

  it.each(['0,65', '1,2'])('is refused where it is written with a comma: %s', (typed) => {
    expect(value(typed, 'en-US')).toBe('refused');
  });

  it("reads the apostrophe of Switzerland's German", () => {
    expect(value("1'200.5", 'de-CH')).toBe(1200.5);
  });
});

describe('text', () => {
  it.each(['5-10', '12 kg', 'hydrogel', '10 20', '12345678901234567890', '-', '', '1.2.3'])(
    'stays text in every language: %s',
    (typed) => {
      for (const locale of ['de-DE', 'en-US', 'fr-FR']) expect(value(typed, locale)).toBe('text');
    },
  );

  it('reads the two logical values', () => {
    expect(read('True', 'de-DE')).toEqual({ kind: 'boolean', value: true });
  });
});

describe('a formula typed where the decimal mark is a comma', () => {
  it.each([
    ['=POWDER.DRYMASS(100;0,65)', '=POWDER.DRYMASS(100,0.65)'],
    ['=A1*0,65', '=A1*0.65'],
    ['=(A1+1,5)*2', '=(A1+1.5)*2'],
    ['=POWDER.DRYMASS(A1,B2)', '=POWDER.DRYMASS(A1,B2)'],
    ['=POWDER.DRYMASS(A1,5)', '=POWDER.DRYMASS(A1,5)'],
    ['=POWDER.DRYMASS(100, 65)', '=POWDER.DRYMASS(100, 65)'],
    ['=POWDER.DRYMASS(100,0.65)', '=POWDER.DRYMASS(100,0.65)'],
    ['=IF(A1="1,5;2";1;2)', '=IF(A1="1,5;2",1,2)'],
    ["='Run 1,5'!A1*2", "='Run 1,5'!A1*2"],
    ['=SUM({1;2})', '=SUM({1;2})'],
  ])('comes to the notation of the grid: %s', (typed, expected) => {
    expect(formula(typed, 'de-DE')).toBe(expected);
  });

  it.each([
    '=POWDER.DRYMASS(100,65)',
    '=SUM(A1,1,5)',
    '=A1*1.200',
    '=SUM(A1;1.5)',
    '=SUM(A1;2,B1)',
    '=SUM({0,65;0,7})',
    '=SUM(A1;{0,65;0,7})',
  ])('is refused where it can be read in two ways: %s', (typed) => {
    expect(formula(typed, 'de-DE')).toBe('refused');
  });

  it('keeps the numbers that stood in the formula before', () => {
    expect(formula('=A2*1.125', 'de-DE', '=A1*1.125')).toBe('=A2*1.125');
    expect(formula('=POWDER.DRYMASS(A2+100,65)', 'de-DE', '=POWDER.DRYMASS(100,65)')).toBe(
      '=POWDER.DRYMASS(A2+100,65)',
    );
  });
});

describe('a formula typed where the decimal mark is a point', () => {
  it('stays as it is', () => {
    expect(formula('=POWDER.DRYMASS(100,65)', 'en-US')).toBe('=POWDER.DRYMASS(100,65)');
  });

  it('may have semicolons, but not beside commas', () => {
    expect(formula('=POWDER.DRYMASS(100;0.65)', 'en-US')).toBe('=POWDER.DRYMASS(100,0.65)');
    expect(formula('=POWDER.DRYMASS(100;0,65)', 'en-US')).toBe('refused');
  });
});

describe('a number shown while it is edited', () => {
  it('is written so that typing it again gives the same number', () => {
    for (const locale of ['de-DE', 'en-US', 'fr-FR', 'de-CH']) {
      for (const number of [0.65, 1200, -3.125, 1e-7, 1.2e21]) {
        expect(value(written(number, notationOf(locale)), locale)).toBe(number);
      }
    }
  });
});

describe('a typed formula over which the grid would stand still', () => {
  it.each([
    ['a name that explains itself', '=LET(a,a,a)'],
    ['a name explained by a later one', '=LET(a,b,b,1,a)'],
    ['LAMBDA', '=LAMBDA(x,x)(1)'],
    ['thousands of operators', `=1${'+1'.repeat(5000)}`],
    ['calls deep in each other', `=${'ABS('.repeat(200)}1${')'.repeat(200)}`],
    ['more letters than a cell may have', `="${'x'.repeat(9000)}"`],
    ['a range of millions of cells', '=SUM(A1:ZZ1000000)'],
  ])('is refused with a sentence: %s', (_, typed) => {
    expect(read(typed, 'en-GB')).toEqual({ kind: 'refused', message: en.entry.tooHeavy });
  });

  it.each(['=LET(a,1,b,a+1,b)', '=SUM(A:A)', '=POWDER.DRYMASS(A1,B1)', '=1+', '=IF(('])(
    'is any other not: %s',
    (typed) => {
      expect(formula(typed, 'en-GB')).toBe(typed);
    },
  );
});

describe('a long text that begins as a number does', () => {
  const row = (one: string, times = 3000) => one.repeat(times);

  // A second is what the page may stand still at most; each takes some milliseconds.
  it.each([
    ['a sign, spaces, a digit and spaces', `-${row(' ')}1${row(' ')}x`],
    ['a sign, spaces and a letter', `-${row(' ')}x`],
    ['digits, spaces and a letter', `${row('1')}${row(' ')}x`],
    ['a sign, spaces, a mark and digits apart', `-${row(' ', 20_000)}.1 1`],
  ])('is a text at once: %s', (_, typed) => {
    const { result, took } = processorTime(() => value(typed, 'en-GB'));
    expect(result).toBe('text');
    expect(took).toBeLessThan(500);
  });

  it('is a number still with spaces after its sign, before its percent sign and around its exponent', () => {
    expect(value('-  3.5', 'en-GB')).toBe(-3.5);
    expect(value('65   %', 'en-GB')).toBe(0.65);
    expect(value('1e3 %', 'en-GB')).toBe(10);
  });
});
