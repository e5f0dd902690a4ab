import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { path } from '../paths.js';

const node = (...words: string[]) => [process.execPath, ...words];
const tsc = (project: string) => node('node_modules/typescript/bin/tsc', '--project', project);

const steps: Record<string, string[]> = {
  'src and functions compile without the DOM': tsc('.config/tsconfig.library.json'),
  'everything compiles': tsc('tsconfig.json'),
  'Biome finds nothing': node(
    'node_modules/@biomejs/biome/bin/biome',
    'check',
    '--config-path=.config',
    '--error-on-warnings',
  ),
  'every licence is allowed': node('--import', 'tsx', '.config/scripts/licences.ts'),
  'generated files are current': node('--import', 'tsx', '.config/scripts/docs.ts', '--check'),
};

const failed = Object.entries(steps).flatMap(([title, [command, ...words]]) => {
  const { status } = spawnSync(command!, words, { cwd: path(), stdio: 'inherit' });
  console.log(`${status === 0 ? 'ok' : 'FAILED'}: ${title}`);
  return status === 0 ? [] : [title];
});

const counts = { passed: Object.keys(steps).length - failed.length, failed: failed.length };
mkdirSync(path('reports'), { recursive: true });
writeFileSync(path('reports/check.json'), JSON.stringify(counts));
process.exit(failed.length > 0 ? 1 : 0);
