import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../.config/properties.js';
import { catalogue } from '../../src/catalogue.js';
import { evaluateCells, isNoAnswer, isOneCell } from '../../src/core/evaluate.js';
import type { Cell, OneCellInput } from '../../src/core/input.js';
import { isRefused } from '../../src/core/read.js';

/** Any cell within an input's limits, its ends included. */
function within(input: OneCellInput): fc.Arbitrary<Cell> {
  if (input.kind === 'choice') return fc.constantFrom(...input.of);
  if (input.kind !== 'number') return fc.string();
  const [least, most] = input.limit;
  return fc.oneof(fc.double({ min: least, max: most, noNaN: true }), fc.constantFrom(least, most));
}

describe('within the declared limits', () => {
  for (const one of catalogue) {
    const inputs = Object.entries(one.inputs);
    if (!inputs.every(([, input]) => isOneCell(input))) continue;
    it(`${one.id} answers with finite numbers or a sentence`, () => {
      const records = fc.record(Object.fromEntries(inputs.map(([key, input]) => [key, within(input as OneCellInput)])));
      fc.assert(
        fc.property(records, (record) => {
          const answer = evaluateCells(one, record);
          if (isRefused(answer)) expect(answer.refused).toMatch(/\.$/);
          else if (isNoAnswer(answer)) expect(answer.none).toMatch(/\.$/);
          else
            for (const cell of answer.flat()) {
              if (typeof cell === 'number') expect(Number.isFinite(cell)).toBe(true);
              else if (isNoAnswer(cell)) expect(cell.none).toMatch(/\.$/);
              else expect(typeof cell).toBe('string');
            }
        }),
        cases(500),
      );
    });
  }
});
