import { describe, expect, it } from 'vitest';
import { allNumbers, isInvocation, matrixOf, readingOrder, unwrap, widthOf } from '../../functions/cells.js';
import { answers, CellError } from './answers.js';

const DIVIDED = new CellError('#DIV/0!');

describe('a cell as a host hands it over', () => {
  it.each([
    ['a number', 1.5, 1.5],
    ['a truth value', false, false],
    ['a text', 'hydrogel', 'hydrogel'],
    ['null', null, null],
    ['nothing', undefined, null],
    ['an empty text', '', null],
    ['a formatted number', { type: 'FormattedNumber', basicType: 'Double', basicValue: 0.65 }, 0.65],
    ['a wrapped truth value', { type: 'Boolean', basicType: 'Boolean', basicValue: true }, true],
    ['a wrapped text', { type: 'String', basicType: 'String', basicValue: 'kg' }, 'kg'],
    ['a wrapped empty text', { type: 'String', basicType: 'String', basicValue: '' }, null],
    ['an empty value', { type: 'Empty', basicType: 'Empty' }, null],
    ['an entity', { type: 'Entity', basicType: 'Error', basicValue: '#VALUE!' }, 'a data type'],
    ['an object of another kind', { type: 'Function' }, 'a data type'],
    ['a big integer', 12n, '12'],
  ])('is taken out of its wrappings: %s', (_, raw, cell) => {
    expect(unwrap(raw, answers)).toEqual(cell);
  });

  it('stays the error that it is', () => {
    expect(unwrap(DIVIDED, answers)).toBe(DIVIDED);
    expect(unwrap({ type: 'Error', basicType: 'Error', basicValue: '#REF!' }, answers)).toEqual(new CellError('#REF!'));
    expect(unwrap({ basicType: 'Error', basicValue: '#NUM!' }, answers)).toEqual(new CellError('#NUM!'));
  });

  it.each([['NUM'], [7], [undefined]])('is refused where it is an error without a name: %s', (basicValue) => {
    expect(unwrap({ type: 'Error', basicValue }, answers)).toMatchObject({
      code: '#VALUE!',
      message: 'A cell holds an error value that does not say which.',
    });
  });
});

describe('an argument as a host hands it over', () => {
  it('is nothing, or a rectangle', () => {
    expect(matrixOf(null)).toBeUndefined();
    expect(matrixOf(undefined)).toBeUndefined();
    expect(matrixOf(7)).toEqual([[7]]);
    expect(matrixOf([1, 2])).toEqual([[1, 2]]);
    expect(matrixOf([[1], [2]])).toEqual([[1], [2]]);
    expect(matrixOf([[1], 2])).toEqual([[[1], 2]]);
  });

  it('is told from the object that the host appends', () => {
    expect(isInvocation({ address: 'A1' })).toBe(true);
    for (const value of [null, undefined, 7, 'text', [[1]], { basicValue: 7 }]) expect(isInvocation(value)).toBe(false);
  });

  it('is as wide as its widest row', () => {
    expect(widthOf([[1], [1, 2, 3], [1, 2]])).toBe(3);
    expect(widthOf([])).toBe(0);
  });

  it('is read row by row, gaps as blank', () => {
    expect(readingOrder([[1, '', { basicValue: 2 }], [4]], answers)).toEqual({ cells: [1, null, 2, 4, null, null] });
    expect(readingOrder([[1], [DIVIDED], ['x']], answers)).toEqual({ error: DIVIDED });
  });

  it('is a block of numbers where nothing else stands in it', () => {
    expect(
      allNumbers([
        [1, 2],
        [3, 4],
      ]),
    ).toEqual(new Float64Array([1, 2, 3, 4]));
    expect(allNumbers([[1, 2], [3]])).toBeUndefined();
    expect(allNumbers([['1']])).toBeUndefined();
  });
});
