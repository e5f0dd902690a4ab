import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { german } from '../functions/german/index.js';
import { metadata } from '../functions/metadata.js';
import { catalogue, families } from '../src/catalogue.js';
import { developmentAddress } from './address.js';
import { calculationsFile } from './calculations.js';
import { path } from './paths.js';
import { picture, roomTable } from './rooms.js';
import { checksPage } from './scripts/checks.js';
import { reference } from './scripts/reference.js';

/** A page that people write, with what is made between its two marks. */
function withBlock(name: string, block: string): string {
  const text = readFileSync(path(name), 'utf8');
  const marks = /(<!-- made by npm run docs -->\n)[\s\S]*(<!-- end of what is made -->)/;
  if (!marks.test(text)) throw new Error(`${name} lacks the marks between which npm run docs writes.`);
  return text.replace(marks, (_, from: string, to: string) => `${from}${block}\n${to}`);
}

/** Every committed file that is made from the declarations, the imports and the published checks, and what it should hold. */
export function generated(): Record<string, string> {
  return {
    'docs/architecture.md': withBlock('docs/architecture.md', `${picture()}\n\n${roomTable()}`),
    'src/calculations.ts': calculationsFile(),
    'docs/functions.md': reference(families),
    'docs/checks.md': checksPage(catalogue),
    'docs/functions.json': `${JSON.stringify(metadata(developmentAddress), null, 2)}\n`,
    'docs/functions.de.json': `${JSON.stringify(metadata(developmentAddress, german), null, 2)}\n`,
  };
}

/** The names of the generated files whose committed text is not what the declarations make now. */
export function stale(files = generated()): string[] {
  const committed = (name: string) => (existsSync(path(name)) ? readFileSync(path(name), 'utf8') : undefined);
  return Object.entries(files).flatMap(([name, text]) => (committed(name) === text ? [] : [name]));
}

export function write(files = generated()): string[] {
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(path(name)), { recursive: true });
    writeFileSync(path(name), text);
  }
  return Object.keys(files);
}
