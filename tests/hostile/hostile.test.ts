import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases, limited } from '../../.config/properties.js';
import { bindAll, type WorksheetFunction } from '../../functions/bind.js';
import { parametersOf } from '../../functions/parameters.js';
import { catalogue } from '../../src/catalogue.js';
import { answers, CellError } from '../functions/answers.js';
import { callsOf } from './calls.js';
import { faultOf } from './judgement.js';

const functions = bindAll(answers);
const EVERY = catalogue.map((one) => [one.id, functions.get(one.id) as WorksheetFunction, one] as const);

/** Whether a call got past every refusal: a number or a text stands somewhere in its answer. */
const answered = (answer: unknown): boolean =>
  Array.isArray(answer) && answer.flat().some((cell) => !(cell instanceof CellError));

describe('whatever the host hands over', () => {
  it.each(EVERY)(
    '%s answers with one range of finite numbers, texts and errors with sentences, and twice the same',
    (_, fn, calculation) => {
      let deep = 0;
      fc.assert(
        fc.property(callsOf(calculation), (args) => {
          expect(faultOf(fn, args)).toBeUndefined();
          if (answered(fn(...args, {}))) deep++;
        }),
        cases(1000),
      );
      // Cases that are all refused at the first look would try nothing behind it.
      expect(deep).toBeGreaterThan(0);
    },
  );

  it.each(EVERY)('%s answers 20,000 rows of one hostile cell within seconds', (_, fn, { inputs }) => {
    for (const cell of [1, 'x', new CellError('#REF!')]) {
      const column = Array.from({ length: limited(20_000) }, () => [cell]);
      expect(
        faultOf(
          fn,
          parametersOf(inputs).map(() => column),
        ),
        String(cell),
      ).toBeUndefined();
    }
  });
});

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
