import { describe, expect, it } from 'vitest';
import { CellError, call } from './answers.js';

const moistures = [[0.5, 0.65]];

describe('ranges in a worksheet function', () => {
  it('answers one cell with one cell', () => {
    expect(call('DRYMASS', [[100]], [[0.65]])).toEqual([[35]]);
  });

  it('pairs a column with a single value', () => {
    expect(call('DRYMASS', [[100], [200], [300]], [[0.5]])).toEqual([[50], [100], [150]]);
  });

  it('makes a grid of one column and one row', () => {
    expect(call('DRYMASS', [[100], [200]], moistures)).toEqual([
      [50, 35],
      [100, 70],
    ]);
  });

  it('gives #N/A at a place outside one of the ranges, and says outside which', () => {
    const answer = call('DRYMASS', [[100], [200]], [[0.5], [0.5], [0.5]]) as unknown[][];
    expect(answer.slice(0, 2)).toEqual([[50], [100]]);
    expect(answer[2]?.[0]).toMatchObject({ code: '#N/A', message: expect.stringContaining('outside Mass') });
  });

  it('refuses ranges whose combination would freeze the sheet', () => {
    const column = Array.from({ length: 100_000 }, () => [1]);
    const row = [Array.from({ length: 100_000 }, () => 0.5)];
    expect(call('DRYMASS', column, row)).toMatchObject({
      code: '#VALUE!',
      message: 'The ranges combine to 100000 rows × 100000 columns; one call answers at most 4194304 cells.',
    });
  });

  it('lays out a row answer beside each row of a column', () => {
    expect(call('SWAPRANGE', [[60], [100]], [['hydrogel']], [['adsorptive']])).toEqual([
      [42, 51, 60],
      [70, 85, 100],
    ]);
  });

  it('refuses a row of cells where the answer itself is a row', () => {
    expect(call('SWAPRANGE', [[60, 100]], [['hydrogel']], [['adsorptive']])).toMatchObject({
      code: '#VALUE!',
      message: 'Dose takes one cell or one column, but a range of 1 rows × 2 columns was given.',
    });
  });

  it('refuses a square of cells there, too', () => {
    const square = [
      [60, 100],
      [70, 80],
    ];
    expect(call('SWAPRANGE', square, 'hydrogel', 'adsorptive')).toMatchObject({
      message: 'Dose takes one cell or one column, but a range of 2 rows × 2 columns was given.',
    });
  });

  it('fills a whole row of the answer with the error of its row, and no other', () => {
    const error = new CellError('#DIV/0!');
    expect(call('SWAPRANGE', [[error], [60]], 'hydrogel', 'adsorptive')).toEqual([
      [error, error, error],
      [42, 51, 60],
    ]);
    const [refused] = call('SWAPRANGE', -1, 'hydrogel', 'adsorptive') as CellError[][];
    expect(refused?.map(({ message }) => message)).toEqual(Array(3).fill(expect.stringContaining('Dose must be')));
  });

  it('treats the gaps of a ragged range as blank cells', () => {
    expect(call('DRYMASS', [[100, 200], [300]], [[0.5]])).toEqual([
      [50, 100],
      [150, 0],
    ]);
  });

  it('refuses an empty range by name', () => {
    expect(call('DRYMASS', [[]], [[0.5]])).toMatchObject({ code: '#VALUE!', message: 'Mass is an empty range.' });
  });
});

describe('a cell of an argument', () => {
  it.each([[0], [null], [undefined], ['']])('counts as 0 when blank, however the host writes it: %j', (blank) => {
    expect(call('DRYMASS', [[blank]], [[0.5]])).toEqual([[0]]);
    expect(call('PUMPRATE', [[250]], [[90]], [[blank]])).toMatchObject({
      code: '#VALUE!',
      message: 'Slurry strength must be from 0.1 to 1000 g/L, but the cell is blank or 0.',
    });
  });

  it('is never turned from text into a number', () => {
    expect(call('DRYMASS', [['1.200']], [[0.5]])).toMatchObject({
      code: '#VALUE!',
      message: expect.stringMatching(/^Mass is text, not a number: "1\.200"\. It must be from 0 to .* kg\.$/),
    });
  });

  it('is refused as TRUE or FALSE', () => {
    expect(call('DRYMASS', [[true]], [[0.5]])).toMatchObject({ message: expect.stringContaining('Mass is TRUE') });
  });

  it('is refused outside its limits with both limits, the unit and what was given', () => {
    expect(call('BODYFEED', [[250]], [[20_000]])).toMatchObject({
      code: '#VALUE!',
      message: 'Body feed must be from 0 to 10\u202f000 g/hL, but 20\u202f000 g/hL was given.',
    });
  });

  it('is told to write 65 % where 65 was given for a fraction', () => {
    expect(call('DRYMASS', [[100]], [[65]])).toMatchObject({
      message: 'Moisture must be a fraction from 0 to 0.999, but 65 was given. For 65 percent write 65 % or 0.65.',
    });
  });

  it('hands an error on at its own place alone', () => {
    const error = new CellError('#DIV/0!');
    expect(call('DRYMASS', [[100], [error], [300]], [[0.5]])).toEqual([[50], [error], [150]]);
    expect(call('DRYMASS', [[error]], [[0.5]])).toBe(error);
  });

  it('hands an error on before it says that another input is refused', () => {
    const error = new CellError('#REF!');
    expect(call('DRYMASS', [[-1]], [[error]])).toBe(error);
  });

  it('is read through a formatted number, and an error through its data type', () => {
    const formatted = { type: 'FormattedNumber', basicType: 'Double', basicValue: 0.65, numberFormat: '0 %' };
    expect(call('DRYMASS', [[100]], [[formatted]])).toEqual([[35]]);
    const failed = { type: 'Error', basicType: 'Error', basicValue: '#NUM!' };
    expect(call('DRYMASS', [[100]], [[failed]])).toMatchObject({ code: '#NUM!' });
  });

  it('is refused with a sentence where it is an entity, a picture or an error that does not say which', () => {
    const entity = { type: 'Entity', text: 'Beer', basicType: 'Error', basicValue: '#VALUE!', properties: {} };
    const sentence = expect.stringContaining('Mass is text, not a number: "a data type".');
    expect(call('DRYMASS', [[entity]], [[0.65]])).toMatchObject({ code: '#VALUE!', message: sentence });
    expect(call('DRYMASS', [[{ type: 'WebImage' }]], [[0.65]])).toMatchObject({ message: sentence });
    for (const basicValue of [undefined, null, 'oh']) {
      expect(call('DRYMASS', [[{ type: 'Error', basicValue }]], [[0.65]])).toMatchObject({
        code: '#VALUE!',
        message: 'A cell holds an error value that does not say which.',
      });
    }
    expect(call('DRYMASS', [[{ basicType: 'Error', basicValue: '#REF!' }]], [[0.65]])).toMatchObject({ code: '#REF!' });
  });

  it('is refused by name where it is no finite number', () => {
    expect(call('DRYMASS', [[Number.NaN]], [[0.5]])).toMatchObject({
      message: expect.stringContaining('not a finite'),
    });
    expect(call('DRYMASS', [[Number.POSITIVE_INFINITY]], [[0.5]])).toMatchObject({ code: '#VALUE!' });
  });

  it('quotes at most 60 characters of a text', () => {
    const answer = call('DRYMASS', [['x'.repeat(100)]], [[0.5]]) as CellError;
    expect(answer.message).toContain(`"${'x'.repeat(60)}…"`);
    expect(answer.message).not.toContain('x'.repeat(61));
  });
});

describe('an argument left out', () => {
  it('takes its preset where it has one', () => {
    expect(call('SWAPDOSE', [[60]], [['hydrogel']], [['adsorptive']], null)).toEqual([[51]]);
    expect(call('SWAPDOSE', [[60]], [['hydrogel']], [['adsorptive']])).toEqual([[51]]);
  });

  it('is refused by name where it has none', () => {
    expect(call('DRYMASS', [[100]], null)).toMatchObject({
      code: '#VALUE!',
      message: 'Moisture must be a fraction from 0 to 0.999, but nothing was given.',
    });
  });

  it('is told apart from a blank cell by SWAPDOSE alone, where a blank cell is the low end', () => {
    expect(call('SWAPDOSE', [[60]], [['hydrogel']], [['adsorptive']], [[null]])).toEqual([[42]]);
  });
});

describe('many cells refused alike', () => {
  it('share one error object', () => {
    const answer = call('DRYMASS', [[100], [200], [300]], [[65]]) as unknown[][];
    expect(answer[0]?.[0]).toBeInstanceOf(CellError);
    expect(answer[1]?.[0]).toBe(answer[0]?.[0]);
    expect(answer[2]?.[0]).toBe(answer[0]?.[0]);
  });
});
