import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { bundledForNode } from './forNode.js';
import { dist, path } from './paths.js';

/** Writes the starter sheets as files into dist/starters; each offers the add-in of the manifest. */
export async function buildStarters(): Promise<string> {
  const manifest = readFileSync(path('manifest.xml'), 'utf8');
  const said = (name: string) => new RegExp(`<${name}>([^<]+)</${name}>`).exec(manifest)?.[1] ?? '';
  const { writeStarters } = await bundledForNode<typeof import('./startersEntry.js')>('starters');
  const names = await writeStarters(join(dist, 'starters'), { id: said('Id'), version: said('Version') });
  return `starters/ ${names.join(', ')}`;
}
