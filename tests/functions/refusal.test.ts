import { describe, expect, it } from 'vitest';
import { bind } from '../../functions/bind.js';
import type { Calculation } from '../../src/core/calculation.js';
import { answers, type CellError } from './answers.js';

const declared = {
  id: 'SAMPLE',
  summary: 'A sample.',
  question: 'What?',
  method: 'none',
  sources: ['Made up for this test.'],
  inputs: {
    a: { kind: 'number', label: 'A', unit: 'kg', limit: [0, 10], help: 'A mass.', source: 'Made up.' },
    more: { kind: 'series', label: 'More', unit: 'kg', limit: [0, 10], least: 2, help: 'Masses.', source: 'Made up.' },
  },
  example: { given: { a: 1, more: [1, 2] }, result: 1 },
} as const;

const bound = (
  compute: (si: { a: number; more: Float64Array }) => unknown,
  output: unknown = { kind: 'number', label: 'B', unit: 'g' },
) => {
  const one = { ...declared, output, compute } as unknown as Calculation;
  return bind(one, answers);
};

describe('a worksheet function whose formula', () => {
  it('overflows gives #N/A with a sentence, never an infinity', () => {
    const fn = bound(({ a }) => a * 1e308);
    expect(fn([[5], [1e-10]], [[1], [2]], {})).toEqual([
      [{ code: '#N/A', message: 'B lies beyond the numbers that a worksheet can hold at these inputs.' }],
      [1e301],
    ]);
  });

  it('throws gives #VALUE! that names the function', () => {
    const fn = bound(() => {
      throw new Error('a mistake of ours');
    });
    expect(fn([[1]], [[1], [2]], {})).toMatchObject({
      code: '#VALUE!',
      message: 'POWDER.SAMPLE failed: a mistake of ours. Please report this with the formula.',
    });
  });

  it('has no answer gives #N/A with the reason at that place alone', () => {
    const fn = bound(({ a }) => (a > 2 ? { none: 'A is too much for it.' } : a));
    expect(fn([[1], [3]], [[1], [2]], {})).toEqual([[1000], [{ code: '#N/A', message: 'A is too much for it.' }]]);
  });

  it('answers with a report refuses a range where one cell is due', () => {
    const fn = bound(({ a }) => ({ b: a }), { kind: 'report', fields: { b: { label: 'B', unit: 'kg' } } });
    expect((fn([[1], [3]], [[1], [2]], {}) as CellError).message).toBe(
      'A takes one cell, but a range of 2 rows × 1 columns was given.',
    );
    expect(fn([[3]], [[1], [2]], {})).toEqual([['B kg', 3]]);
  });

  it('gives no answer with minus zero', () => {
    const fn = bound(({ a }) => -a);
    expect(Object.is((fn([[0]], [[1], [2]], {}) as number[][])[0]?.[0], 0)).toBe(true);
  });

  it('never sees an error cell of a series: the error is the whole answer', () => {
    const error = answers.error('#REF!');
    expect(bound(({ a }) => a)([[1], [2]], [[1], [error]], {})).toBe(error);
  });

  it('leaves its arguments as they were', () => {
    const given = Object.freeze([Object.freeze([1]), Object.freeze([2])]);
    expect(bound(({ a, more }) => a + (more[1] ?? 0))(given, given, {})).toEqual([[3000], [4000]]);
  });
});
