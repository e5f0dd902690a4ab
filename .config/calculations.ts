import { readdirSync, readFileSync } from 'node:fs';
import { path } from './paths.js';

const HEAD = `/**
 * Every calculation by name, so that a bundler keeps only those that a program imports. Written by \`npm run docs\`.
 * SAFERANGE and RANGECHECK are not among them: they read the whole catalogue, and stand in it.
 */
`;

/** What `src/calculations.ts` should hold: one line for each file of `src/<family>` that declares a calculation. */
export function calculationsFile(): string {
  const files = readdirSync(path('src'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => `${entry.parentPath.slice(path('src').length)}/${entry.name}`.replaceAll('\\', '/'))
    .sort();
  const lines = files.flatMap((file) => {
    const [, name] = /^export const (\w+) = calculation\(/m.exec(readFileSync(path(`src${file}`), 'utf8')) ?? [];
    return name === undefined ? [] : [`export { ${name} } from '.${file.replace(/\.ts$/, '.js')}';`];
  });
  return `${HEAD}${lines.join('\n')}\n`;
}
