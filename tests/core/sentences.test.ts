import { describe, expect, it } from 'vitest';
import type { ChoiceInput, NumberInput, OneCellInput } from '../../src/core/input.js';
import { choiceRefusal, numberRefusal, readCell, readChoice, readOmitted } from '../../src/core/read.js';
import { columnToSI, toSI } from '../../src/core/units.js';
import {
  anyOf,
  figure,
  isNoNumber,
  isTruth,
  labelled,
  outsideLimits,
  plainNumber,
  quoted,
  spanInWords,
} from '../../src/core/wording.js';

const kind: ChoiceInput = {
  kind: 'choice',
  label: 'Kind',
  help: 'Which it is.',
  of: ['Hydrogel', 'xerogel'],
  unfit: { PVPP: 'it removes polyphenol.', gum: 'it gels.' },
};
const text = { kind: 'text', label: 'Unit', help: 'Which unit.' } as OneCellInput;
const any = { kind: 'cell', label: 'Value', help: 'Any value.' } as OneCellInput;
const moisture: NumberInput = {
  kind: 'number',
  label: 'Moisture',
  help: 'Water.',
  unit: 'fraction',
  limit: [0, 0.5],
  source: 'none',
};
const mass: NumberInput = { ...moisture, label: 'Mass', unit: 'kg', limit: [1, 90] };

describe('a number in a sentence', () => {
  it('has narrow spaces between thousands from ten thousand on, and no mark that could be a decimal one', () => {
    expect(plainNumber(9999)).toBe('9999');
    expect(plainNumber(10_000)).toBe('10\u202f000');
    expect(plainNumber(-1_234_567)).toBe('-1\u202f234\u202f567');
    expect(plainNumber(999_999_999_999_999)).toBe('999\u202f999\u202f999\u202f999\u202f999');
    expect(plainNumber(1e15)).toBe('1000000000000000');
    expect(plainNumber(12_345.5)).toBe('12345.5');
  });

  it('carries its unit, and a calculated one four digits', () => {
    expect(figure(toSI(0.123_456, 'bar'), 'bar')).toBe('0.1235 bar');
    expect(figure(0.123_456, 'fraction')).toBe('0.1235');
    expect(spanInWords([0, 1], 'as given')).toBe('from 0 to 1');
    expect(spanInWords([0, 1], '')).toBe('from 0 to 1');
    expect(spanInWords([0, 1], 'fraction')).toBe('a fraction from 0 to 1');
    expect(labelled('Price', 'money/kg')).toBe('Price per kg');
    expect(labelled('Cost', 'money')).toBe('Cost');
    expect(labelled('Load', 'kg/m²')).toBe('Load kg/m²');
  });
});

describe('a text in a sentence', () => {
  it('is cut after sixty letters', () => {
    expect(quoted('x'.repeat(60))).toBe(`"${'x'.repeat(60)}"`);
    expect(quoted('x'.repeat(61))).toBe(`"${'x'.repeat(60)}…"`);
  });

  it('is one of several as a person would list them', () => {
    expect([anyOf([]), anyOf(['a']), anyOf(['a', 'b']), anyOf(['a', 'b', 'c'])]).toEqual([
      '',
      'a',
      'a or b',
      'a, b or c',
    ]);
  });
});

describe('the refusal of a number', () => {
  it('tells how to write a percentage where that would serve, and only there', () => {
    const hint = (given: number) => outsideLimits(moisture, given).includes('percent write');
    expect(outsideLimits(moisture, 40)).toBe(
      'Moisture must be a fraction from 0 to 0.5, but 40 was given. For 40 percent write 40 % or 0.4.',
    );
    expect([hint(1), hint(1.5), hint(50), hint(51), hint(100), hint(101)]).toEqual([
      false,
      true,
      true,
      false,
      false,
      false,
    ]);
    const whole = { ...moisture, limit: [0, 1] as const };
    expect([outsideLimits(whole, 100), outsideLimits(whole, 101)].map((one) => one.includes('percent'))).toEqual([
      true,
      false,
    ]);
    expect(outsideLimits(mass, 95)).toBe('Mass must be from 1 to 90 kg, but 95 kg was given.');
    expect(outsideLimits({ ...mass, unit: '', limit: [0, 1] }, 50)).not.toContain('percent');
  });

  it('tells a truth value and what is no number by their names', () => {
    expect(isTruth(mass, true)).toBe('Mass is TRUE, not a number. It must be from 1 to 90 kg.');
    expect(isTruth(mass, false)).toBe('Mass is FALSE, not a number. It must be from 1 to 90 kg.');
    expect(isNoNumber(mass)).toBe('Mass is not a finite number. It must be from 1 to 90 kg.');
    expect(numberRefusal(mass, 0)).toBe('Mass must be from 1 to 90 kg, but the cell is blank or 0.');
    expect([numberRefusal(mass, 1), numberRefusal(mass, 90)]).toEqual([undefined, undefined]);
  });
});

describe('a choice', () => {
  it('is read in any case and with spaces around it', () => {
    expect(readChoice(kind, ' hYDROGEL ')).toBe('Hydrogel');
    expect(readChoice(kind, 'xerogel')).toBe('xerogel');
  });

  it.each([
    [null, 'the cell is blank or 0.'],
    ['', 'the cell is blank or 0.'],
    [0, 'the cell is blank or 0.'],
    [12_345, '12\u202f345 was given.'],
    [true, 'TRUE was given.'],
    ['sand', '"sand" was given.'],
    [' pvpp', '" pvpp" was given: it removes polyphenol.'],
    ['GUM', '"GUM" was given: it gels.'],
  ])('is refused with what was given: %s', (cell, end) => {
    expect(choiceRefusal(kind, cell)).toBe(`Kind must be Hydrogel or xerogel, but ${end}`);
  });

  it('has its preset where nothing is given, and is refused without one', () => {
    expect(readOmitted({ ...kind, preset: 'xerogel' })).toBe('xerogel');
    expect(readOmitted(kind)).toEqual({ refused: 'Kind must be Hydrogel or xerogel, but nothing was given.' });
  });
});

describe('a text', () => {
  it('is read without the spaces around it', () => {
    expect(readCell(text, ' hL ')).toBe('hL');
  });

  it.each([[null], [0], [''], ['  ']])('is refused where the cell is blank or 0: %s', (cell) => {
    expect(readCell(text, cell)).toEqual({ refused: 'Unit must be a text, but the cell is blank or 0.' });
  });

  it.each([
    [7, '7'],
    [false, 'FALSE'],
  ])('is refused where something else was given: %s', (cell, said) => {
    expect(readCell(text, cell)).toEqual({ refused: `Unit must be a text, but ${said} was given.` });
  });

  it('is refused where nothing is given', () => {
    expect(readOmitted(text)).toEqual({ refused: 'Unit must be a text, but nothing was given.' });
  });
});

describe('a cell of any content', () => {
  it('is taken as it is, and as blank where nothing is given', () => {
    for (const cell of ['x', 0, true, null]) expect(readCell(any, cell)).toBe(cell);
    expect(readOmitted(any)).toBeNull();
  });
});

describe('a column of a unit', () => {
  it('is taken to SI where it stands, cell by cell as one cell is', () => {
    const column = new Float64Array([0, 20, 100]);
    expect(columnToSI(column, '°C')).toBe(column);
    expect([...column]).toEqual([0, 20, 100].map((one) => toSI(one, '°C')));
    expect([...columnToSI(new Float64Array([1, 2]), 'bar')]).toEqual([1e5, 2e5]);
  });
});
