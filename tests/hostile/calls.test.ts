import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../.config/properties.js';
import { CellError } from '../functions/answers.js';
import { callsOf } from './calls.js';
import { EVERY } from './every.js';
import { faultOf } from './judgement.js';

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
});
