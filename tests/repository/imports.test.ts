import { describe, expect, it } from 'vitest';
import { circles, importGraph } from '../../.config/imports.js';
import { builtFiles, roomGraph, roomOf } from '../../.config/rooms.js';
import { codeFiles } from './files.js';

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

describe('the imports of this repository', () => {
  it('form no circle, those of types alone among them', () => {
    const graph = importGraph(codeFiles);
    expect([...graph.values()].flat().length).toBeGreaterThan(1000);
    expect(circles(graph)).toEqual([]);
  });

  it('form no circle between rooms, and every file has its room', () => {
    const graph = roomGraph();
    expect(graph.size).toBeGreaterThan(20);
    expect(circles(graph)).toEqual([]);
    expect(builtFiles.filter((file) => roomOf(file) === file)).toEqual([]);
  });
});
