import { describe, expect, it } from 'vitest';
import { limited } from '../../.config/properties.js';
import { parametersOf } from '../../functions/parameters.js';
import { CellError } from '../functions/answers.js';
import { EVERY } from './every.js';
import { faultOf } from './judgement.js';

describe('a whole column of one hostile cell', () => {
  it.each(EVERY)('%s answers 20,000 rows of it within seconds', (_, fn, { inputs }) => {
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
