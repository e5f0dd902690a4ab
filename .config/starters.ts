import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import webpack from 'webpack';
import { dist, path } from './paths.js';
import { common } from './webpack.js';

/** The grid's engine does not load in Node as it is published, so it is bundled first. */
async function bundled(): Promise<typeof import('./startersEntry.js')> {
  const folder = path('.cache/starters');
  const settings = common('functions', '.config/startersEntry.ts');
  const compiler = webpack({
    ...settings,
    name: 'starters',
    target: 'node20',
    entry: { starters: path('.config/startersEntry.ts') },
    output: { path: folder, filename: '[name].cjs', library: { type: 'commonjs2' } },
    optimization: { minimize: false },
    cache: { type: 'filesystem', name: 'starters', cacheDirectory: path('.cache/webpack') },
  });
  await new Promise<void>((resolve, reject) =>
    compiler?.run((failure, stats) =>
      compiler.close(() => {
        if (failure) reject(failure);
        else if (stats?.hasErrors()) reject(new Error(stats.toString({ preset: 'errors-only', colors: false })));
        else resolve();
      }),
    ),
  );
  return createRequire(import.meta.url)(join(folder, 'starters.cjs'));
}

/** Writes the starter sheets as files into dist/starters; each offers the add-in of the manifest. */
export async function buildStarters(): Promise<string> {
  const manifest = readFileSync(path('manifest.xml'), 'utf8');
  const said = (name: string) => new RegExp(`<${name}>([^<]+)</${name}>`).exec(manifest)?.[1] ?? '';
  const { writeStarters } = await bundled();
  const names = await writeStarters(join(dist, 'starters'), { id: said('Id'), version: said('Version') });
  return `starters/ ${names.join(', ')}`;
}
