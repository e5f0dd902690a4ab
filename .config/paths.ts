import { resolve } from 'node:path';

/** The folder that holds package.json. */
export const root = resolve(import.meta.dirname, '..');

/** The path of a file of this repository, from its name relative to the top. */
export const path = (...names: string[]): string => resolve(root, ...names);

/** Where a build goes. */
export const dist = path('dist');
