import { mkdirSync } from 'node:fs';
import webpack from 'webpack';
import { developmentAddress } from '../address.js';
import { path } from '../paths.js';
import { workbookPart } from '../webpack.js';

/** Builds a page of the bench with the engine in it, and gives its folder. It is no part of dist/. */
export async function buildPage(name: 'bareEnginePage' | 'recalculationPage'): Promise<string> {
  const folder = path(`.cache/${name}`);
  mkdirSync(folder, { recursive: true });
  const part = workbookPart({ address: developmentAddress, office: 'local' });
  const { cache: _, ...settings } = part;
  const compiler = webpack({
    ...settings,
    entry: { workbook: path(`.config/bench/${name}.ts`) },
    output: { ...part.output, path: folder },
    experiments: { topLevelAwait: true },
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
  return folder;
}
