import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { path } from '../../.config/paths.js';

const folders = ['src', 'functions', 'taskpane', 'tests', 'docs', '.config', '.ci'];

/** Every file of the project's own folders, by its name relative to the top. */
export const ownFiles: string[] = folders.flatMap((folder) =>
  readdirSync(path(folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => `${entry.parentPath.slice(path().length + 1)}/${entry.name}`.replaceAll('\\', '/')),
);

/** Those that people write as code. */
export const codeFiles = ownFiles.filter((name) => /\.tsx?$/.test(name));

export const textOf = (name: string): string => readFileSync(path(name), 'utf8');

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

/** The file of code behind an import's name: Node reads `units.js`, people write `units.ts`. */
const written = (name: string): string[] =>
  [name.replace(/\.js$/, '.ts'), name.replace(/\.js$/, '.tsx')].filter((one) => codeFiles.includes(one));

/** Which files of code each file of these imports. */
export const importGraph = (files: readonly string[]): ReadonlyMap<string, readonly string[]> =>
  new Map(files.map((name) => [name, importsOf(name).flatMap(written)]));
