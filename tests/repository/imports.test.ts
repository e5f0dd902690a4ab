import { describe, expect, it } from 'vitest';
import { circles } from './imports.js';

describe('the search for circles of imports', () => {
  it('finds a file that imports itself, and a way of several files, each once', () => {
    const imports = new Map([
      ['a', ['b', 'd']],
      ['b', ['c']],
      ['c', ['a']],
      ['d', ['d']],
      ['e', ['a']],
    ]);
    expect(circles(imports).map((circle) => new Set(circle).size)).toEqual([3, 1]);
  });

  it('finds none where two ways lead to one file', () => {
    expect(
      circles(
        new Map([
          ['a', ['b', 'c']],
          ['b', ['d']],
          ['c', ['d']],
          ['d', []],
        ]),
      ),
    ).toEqual([]);
  });
});
