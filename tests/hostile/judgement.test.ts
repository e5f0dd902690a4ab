import { describe, expect, it } from 'vitest';
import type { WorksheetFunction } from '../../functions/bind.js';
import { answers } from '../functions/answers.js';
import { faultOf } from './judgement.js';

describe('the judgement of an answer', () => {
  it.each([
    ['a thrown error', () => new Map().get('nothing').of],
    ['NaN', () => [[Number.NaN]]],
    ['an infinity', () => [[1, Number.NEGATIVE_INFINITY]]],
    ['minus zero', () => [[-0]]],
    ['null', () => [[null]]],
    ['undefined', () => undefined],
    ['a bare number', () => 1],
    ['an empty range', () => []],
    ['an empty row', () => [[]]],
    ['a ragged range', () => [[1], [1, 2]]],
    ['a row that is no row', () => [[1], 2]],
    ['an object', () => [[{}]]],
    ['a refusal without a sentence', () => answers.refused('')],
    ['an exception of ours', () => [[answers.refused('POWDER.X failed: oh. Please report this with the formula.')]]],
    ['a code that no host knows', () => answers.error('undefined')],
    ['chance', () => [[Math.random()]]],
    ['a change of the arguments', (cells: unknown) => [[(cells as number[][]).push([1])]]],
    ['a change deep in the arguments', (cells: unknown) => ((cells as number[][][])[0] as number[][]).fill([0])],
  ])('finds fault with %s', (_, fn) => {
    expect(faultOf(fn as WorksheetFunction, [[[1]]])).toMatch(/\.$/);
  });

  it('finds none with numbers, texts and errors', () => {
    expect(faultOf(() => [[1, 'a', answers.none('No.')]], [[[1]]])).toBeUndefined();
    expect(faultOf(() => answers.error('#DIV/0!'), [])).toBeUndefined();
  });
});
