import { describe, expect, it } from 'vitest';
import { processorTime } from '../processorTime.js';
import { call } from './answers.js';

/** Texts that nothing is called, all different, as where a wrong column was chosen; the second as long as a cell takes. */
const columns = ['unknown mash tun '.repeat(8), 'unknown mash tun '.repeat(1900)].map((start) =>
  Array.from({ length: 1000 }, (_, row) => [`${start}${row}`]),
);

/** Took 2 to 30 seconds: each text was held against every name and every text before it, letter by letter. */
const MOST = 1000;

describe('a column of a thousand different texts that are no names', () => {
  it.each(
    columns.flatMap((texts) => {
      const ones = texts.map(() => [1]);
      return [
        ['PLANCHECK', [texts, ones]],
        ['TOUNIT', [ones, texts, texts.map(() => ['hL'])]],
        ['SWAPDOSE', [ones, texts, texts]],
        ['RANGECHECK', [texts, texts, ones]],
      ] as const;
    }),
  )('is answered by %s without keeping the sheet waiting', (id, args) => {
    const { result, took } = processorTime(() => call(id, ...args) as unknown[][]);
    expect(took).toBeLessThan(MOST);
    expect(result).toHaveLength(1000);
  });
});
