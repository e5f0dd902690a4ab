import { describe, expect, it } from 'vitest';
import { CHECKS } from './all.js';
import { answerTo, titleOf } from './check.js';

describe('a figure from outside', () => {
  it.each(CHECKS.map((check) => [titleOf(check), check] as const))('%s', (_, check) => {
    const answer = answerTo(check);
    if (typeof check.expected === 'string') return expect(answer).toBe(check.expected);
    expect(answer, String(answer)).toBeTypeOf('number');
    expect(Math.abs((answer as number) - check.expected)).toBeLessThanOrEqual(
      check.tolerance * Math.abs(check.expected),
    );
  });
});
