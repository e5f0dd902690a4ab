import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue.js';
import { call, cell, sentence } from './worksheet.js';

const range = (name: string, input: string) => (call('SAFERANGE', name, input) as unknown[][])[0];

describe('SAFERANGE', () => {
  it.each([
    ['BODYFEED', 'Body feed'],
    ['bodyfeed', 'BODY FEED'],
    ['POWDER.BODYFEED', 'Body feed'],
    [' powder.bodyfeed ', ' body feed '],
    ['BODYFEED', 'dose'],
  ])('finds %s, %s however it is written', (name, input) => {
    expect(range(name, input)).toEqual([0, 50, 200, 10_000, 'g/hL']);
  });

  it('reads the labels of a plan, with their unit or without', () => {
    const expected = [0.001, expect.any(Number), expect.any(Number), 1000, 'kg/m²'];
    expect(range('RUNLENGTH', 'Cake space')).toEqual(expected);
    expect(range('RUNLENGTH', 'cake space kg/m²')).toEqual(expected);
  });

  it('leaves the usual range empty where nobody can vouch for one', () => {
    expect(range('SAMESOLIDS', 'Amount')).toEqual([0, '', '', 1e9, 'as given']);
  });

  it('says what there is where it finds nothing, and which input has no range', () => {
    expect(sentence('SAFERANGE', 'POWDER.NOTHING', 'Body feed')).toBe(
      '#VALUE! Function must be the id of a POWDER function, but "POWDER.NOTHING" was given.',
    );
    expect(sentence('SAFERANGE', 'XPOWDER.BODYFEED', 'Body feed')).toMatch(/^#VALUE! Function must be/);
    expect(sentence('SAFERANGE', 'DRYMASS', 'Colour')).toBe(
      '#VALUE! Input must be one of DRYMASS: Mass or Moisture; but "Colour" was given.',
    );
    expect(sentence('SAFERANGE', 'RUNLENGTH', 'Colour')).toMatch(
      /^#VALUE! Input must be one of RUNLENGTH: Labels; but/,
    );
    expect(sentence('SAFERANGE', 'SWAPDOSE', 'From kind')).toBe(
      '#VALUE! From kind is not a number, so it has no range.',
    );
  });

  it('gives the declared limits of every number of every function', () => {
    for (const { id, inputs } of catalogue) {
      for (const input of Object.values(inputs)) {
        if (input.kind !== 'number' && input.kind !== 'series') continue;
        const [from = '', to = ''] = input.usual ?? [];
        expect(range(id, input.label), `${id} ${input.label}`).toEqual([
          input.limit[0],
          from,
          to,
          input.limit[1],
          input.unit,
        ]);
      }
    }
  });
});

describe('RANGECHECK', () => {
  const check = (value: number | string | null, name = 'BODYFEED', input = 'Body feed') =>
    cell('RANGECHECK', name, input, value);

  it('calls both ends of the usual range usual, and what lies outside unusual on either side', () => {
    for (const value of [50, 90, 200]) expect(check(value)).toBe('usual');
    expect(check(49.9)).toBe('unusual: Body feed is usually from 50 to 200 g/hL, and 49.9 g/hL was given.');
    expect(check(200.1)).toMatch(/^unusual: .* 200\.1 g\/hL was given\.$/);
  });

  it('refuses what the function itself refuses, in its words', () => {
    for (const value of [-1, 10_001, 'many']) {
      const [, refused] = /^#VALUE! (.*)$/.exec(sentence('BODYFEED', 250, value)) ?? [];
      expect(check(value)).toBe(`refused: ${refused}`);
    }
  });

  it('has nothing to remark on a number without a usual range, a text or any cell', () => {
    expect(check(1e9, 'SAMESOLIDS', 'Amount')).toBe('usual');
    expect(check('kg', 'TOUNIT', 'From')).toBe('usual');
    expect(check('anything', 'RANGECHECK', 'Value')).toBe('usual');
  });

  it('judges a choice by its words', () => {
    expect(check('Hydrogel', 'SWAPDOSE', 'From kind')).toBe('usual');
    expect(check('pvpp', 'SWAPDOSE', 'From kind')).toMatch(/^refused: From kind must be .* polyphenol/);
    expect(check(3, 'SWAPDOSE', 'From kind')).toMatch(/^refused: From kind must be .* but 3 was given\.$/);
  });

  it('says what there is where it finds nothing', () => {
    expect(sentence('RANGECHECK', 'NOTHING', 'Body feed', 1)).toMatch(/^#VALUE! Function must be/);
  });
});
