import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { chained } from './made.js';
import { chainTable } from './table.js';

const SEPTA = [
  ['flat', 0, 0],
  ['flat with precoat', 0, 800],
  ['a candle', 15, 0],
  ['a candle with precoat', 15, 800],
  ['a thin candle with precoat', 6, 800],
] as const;

const off = (found: number, truth: number) => Math.abs(found / truth - 1);

describe.each(SEPTA)('on %s, made runs through the fits into a plan', (_, septumRadius, precoatLoad) => {
  it.each([0, 0.3, 0.6])('give the true run length and best feed at compressibility %s', (compressibility) => {
    const { truth, found } = chained({ compressibility, septumRadius, precoatLoad }, 'FITCAKES');
    // Without noise the chain is exact: what is left is the search for the exponent.
    expect(off(found.run, truth.run)).toBeLessThan(1e-5);
    expect(off(found.best, truth.best)).toBeLessThan(1e-5);
  });

  it('give them by way of FITRUN where the cake is rigid', () => {
    const { truth, found } = chained({ compressibility: 0, septumRadius, precoatLoad }, 'FITRUN');
    expect(off(found.run, truth.run)).toBeLessThan(1e-9);
    expect(off(found.best, truth.best)).toBeLessThan(1e-7);
  });
});

describe('the table of the chain in the methods', () => {
  it('is what the functions say today', () => {
    const methods = readFileSync(new URL('../../docs/methods.md', import.meta.url), 'utf8');
    expect(methods).toContain(chainTable());
  });
});
