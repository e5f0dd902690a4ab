import { defineConfig } from 'vitest/config';
import { path } from './paths.js';
import { browser, built } from './vitest.config.js';

// Mutation testing changes the library: only the tests that call it can tell, and each of them runs for many mutants.
// So those of pane, pictures and workbook stay away, and those that look for nothing but exceptions and NaN; and no
// property tries more than 50 cases.
const away = [
  'check',
  'explain',
  'formula',
  'hostile',
  'manifest',
  'pane',
  'picture',
  'repository',
  'sheets',
  'workbook',
];

export default defineConfig({
  root: path(),
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: [...built, ...browser, ...away.map((folder) => `tests/${folder}/**`)],
    setupFiles: [path('.config/properties.ts')],
    env: { POWDERBOOK_CASES: '50' },
    testTimeout: 60_000,
  },
});
