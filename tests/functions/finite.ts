import { expect } from 'vitest';
import { CellError } from './answers.js';

/** Every cell of an answer is a finite number, a text, or an error with a sentence that no fault of ours wrote. */
export function expectFiniteOrSentences(answer: unknown): void {
  for (const cell of Array.isArray(answer) ? answer.flat() : [answer]) {
    if (cell instanceof CellError) {
      expect(cell.message).toMatch(/\.$/);
      expect(cell.message).not.toContain('failed');
    } else if (typeof cell === 'number') expect(cell).toSatisfy(Number.isFinite);
    else expect(cell).toBeTypeOf('string');
  }
}
