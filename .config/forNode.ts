import { createRequire } from 'node:module';
import { join } from 'node:path';
import webpack from 'webpack';
import { path } from './paths.js';
import { common } from './webpack.js';

/** Bundles a module of .config and loads it: the grid's engine does not load in Node as it is published. */
export async function bundledForNode<Exports>(name: string): Promise<Exports> {
  const folder = path('.cache', name);
  const entry = `.config/${name}Entry.ts`;
  const compiler = webpack({
    ...common('functions', entry),
    name,
    target: 'node20',
    entry: { [name]: path(entry) },
    output: { path: folder, filename: '[name].cjs', library: { type: 'commonjs2' } },
    optimization: { minimize: false },
    cache: { type: 'filesystem', name, cacheDirectory: path('.cache/webpack') },
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
  return createRequire(import.meta.url)(join(folder, `${name}.cjs`));
}
