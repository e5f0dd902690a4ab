import { describe, expect, it } from 'vitest';
import { columnsOf, rowsOf } from './columns.js';

describe('a best feed where nobody ran', () => {
  const remark = (...tried: number[]) =>
    String(rowsOf('BESTFEED', ...columnsOf({}), 50, 250, ...tried).find(([label]) => label === 'Remark')?.[1]);

  it('is told apart from one within the runs, with both ends', () => {
    // The best feed of the invented plan is 79.57 g/hL.
    expect(remark(90, 140)).toContain('Outside the feeds that were run, 90 g/hL to 140 g/hL: a guess of the model');
    expect(remark(70, 140)).not.toContain('Outside');
    expect(remark()).not.toContain('Outside');
  });
});
