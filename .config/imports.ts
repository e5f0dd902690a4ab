import ts from 'typescript';
import { codeFiles, textOf } from './files.js';
import { path } from './paths.js';

/**
 * What a module imports by a relative name, resolved to a name relative to the top: for its types alone, for its values,
 * and what it loads later.
 */
export function importsOf(name: string): string[] {
  const folder = path(name, '..');
  return ts
    .preProcessFile(textOf(name))
    .importedFiles.map(({ fileName }) => fileName)
    .filter((found) => found.startsWith('.'))
    .map((found) =>
      path(folder, found)
        .slice(path().length + 1)
        .replaceAll('\\', '/'),
    );
}

/** What imports what. */
export type Graph = ReadonlyMap<string, readonly string[]>;

/** The file of code behind an import's name: Node reads `units.js`, people write `units.ts`. */
const written = (name: string): string[] =>
  [name.replace(/\.js$/, '.ts'), name.replace(/\.js$/, '.tsx')].filter((one) => codeFiles.includes(one));

/** Which files of code each file of these imports. */
export const importGraph = (files: readonly string[]): Graph =>
  new Map(files.map((name) => [name, importsOf(name).flatMap(written)]));

/** The shortest way from a file back to itself through what imports what, or nothing. */
function circleThrough(start: string, imports: Graph): string[] | undefined {
  const before = new Map<string, string>();
  const queue = [start];
  for (const file of queue) {
    for (const next of imports.get(file) ?? []) {
      if (next === start) {
        const way = [start];
        for (let step = file; step !== start; step = before.get(step)!) way.unshift(step);
        return [start, ...way];
      }
      if (before.has(next)) continue;
      before.set(next, file);
      queue.push(next);
    }
  }
  return undefined;
}

/** Circles of imports, each once, as the files along the way. */
export function circles(imports: Graph): string[][] {
  const found = new Map<string, string[]>();
  for (const file of imports.keys()) {
    const circle = circleThrough(file, imports);
    if (circle) found.set([...new Set(circle)].sort().join(), circle);
  }
  return [...found.values()];
}
