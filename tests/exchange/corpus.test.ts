import { beforeAll, describe, expect, it } from 'vitest';
import { differences, inWords, judged } from './compare.js';
import { factsIn } from './facts/workbook.js';
import { CORPUS } from './made/index.js';
import { bytesOfMade } from './make.js';
import { type Through, throughGrid } from './through.js';

describe.each(Object.entries(CORPUS))('a workbook of %s, opened in the grid and saved', (_, made) => {
  const bytes = bytesOfMade(made);
  let once: Through;
  beforeAll(async () => {
    once = await throughGrid(bytes);
  });

  it('differs from the file only in what the notice of opening names', () => {
    const before = factsIn(bytes);
    expect(before.length).toBeGreaterThan(5);
    const all = judged(differences(before, factsIn(once.bytes)), once.told);
    const silent = all.filter(({ told }) => told.length === 0);
    expect(silent.map(inWords)).toEqual([]);
  });

  it('stays as it is when it is opened and saved again', async () => {
    const twice = await throughGrid(once.bytes);
    const changed = differences(factsIn(once.bytes), factsIn(twice.bytes));
    expect(changed.map(inWords)).toEqual([]);
  });
});
