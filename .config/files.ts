import { readdirSync, readFileSync } from 'node:fs';
import { path } from './paths.js';

const folders = ['src', 'functions', 'taskpane', 'tests', 'docs', '.config', '.ci'];

/** Every file of the project's own folders, by its name relative to the top. */
export const ownFiles: string[] = folders.flatMap((folder) =>
  readdirSync(path(folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => `${entry.parentPath.slice(path().length + 1)}/${entry.name}`.replaceAll('\\', '/'))
    .sort(),
);

/** Those that people write as code. */
export const codeFiles = ownFiles.filter((name) => /\.tsx?$/.test(name));

export const textOf = (name: string): string => readFileSync(path(name), 'utf8');
