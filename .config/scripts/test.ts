import { spawnSync } from 'node:child_process';
import { ensureBrowser } from '../browser.js';
import { build } from '../bundle.js';
import { path } from '../paths.js';

try {
  // Before the build, so that a machine without a browser says so at once.
  ensureBrowser();
  console.log(await build());
} catch (failure) {
  console.error(failure instanceof Error ? failure.message : failure);
  process.exit(1);
}

// Words given to npm test go on to vitest: npm test -- tests/moisture
const vitest = [path('node_modules/vitest/vitest.mjs'), 'run', '--config', path('.config/vitest.config.ts')];
const { status } = spawnSync(process.execPath, [...vitest, ...process.argv.slice(2)], { stdio: 'inherit' });
process.exit(status ?? 1);
