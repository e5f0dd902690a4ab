import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cases } from '../../.config/properties.js';
import { catalogue } from '../../src/catalogue.js';
import { isOneCell } from '../../src/core/evaluate.js';
import type { Cell, Input } from '../../src/core/input.js';
import { isRefused, readCell } from '../../src/core/read.js';
import { schemaOf } from '../../src/schema.js';

/** Filled cells, with many at and around an input's limits. Blank is a matter of cells alone: a form leaves it out. */
function cellsFor(input: Input): fc.Arbitrary<Cell> {
  const [least, most] = 'limit' in input ? input.limit : [0, 1];
  const words = input.kind === 'choice' ? [...input.of, ...Object.keys(input.unfit ?? {})] : ['text'];
  return fc.oneof(
    fc.double({ min: least, max: most, noNaN: true }),
    fc.constantFrom(least, most, least - 1, most + 1, most * 1.000001, 65, Number.NaN, Number.POSITIVE_INFINITY),
    fc.constantFrom(...words, ...words.map((word) => ` ${word.toUpperCase()} `), 'nothing of the kind', '1.200'),
    fc.boolean(),
  );
}

describe('the schema for forms and files', () => {
  for (const one of catalogue) {
    const inputs = Object.entries(one.inputs).filter(([, input]) => isOneCell(input));
    if (inputs.length === 0) continue;
    it(`agrees with the cells of ${one.id} on what is refused`, () => {
      const schema = schemaOf({ inputs: Object.fromEntries(inputs) });
      const records = fc.record(Object.fromEntries(inputs.map(([key, input]) => [key, cellsFor(input)])));
      fc.assert(
        fc.property(records, (record) => {
          const cellsRefuse = inputs.some(
            ([key, input]) => isOneCell(input) && isRefused(readCell(input, record[key] as Cell)),
          );
          expect(schema.safeParse(record).success).toBe(!cellsRefuse);
        }),
        cases(300),
      );
    });
  }

  it('refuses a key that no input has', () => {
    const [first] = catalogue;
    expect(first && schemaOf(first).safeParse({ mass: 1, moisture: 0, colour: 1 }).success).toBe(false);
  });
});
