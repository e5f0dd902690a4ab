import { defineConfig } from 'vitest/config';
import { path } from './paths.js';

// Tests of what a build makes, and tests in a browser; everything else runs on the source.
export const built = ['tests/host/**/*.test.ts', 'tests/built/**/*.test.ts'];
export const browser = ['tests/e2e/**/*.test.ts'];
// What says how long a page may take, or looks for the busiest page, runs by itself.
const alone = ['tests/e2e/**/*.alone.test.ts'];

const inBrowser = {
  globalSetup: path('.config/browser-setup.ts'),
  // What a page shows after a moment may take it longer on a busy machine.
  expect: { poll: { timeout: 10_000 } },
  // A page on a busy machine may miss one wait; a fault fails twice.
  retry: process.env.CI ? 1 : 0,
};

export default defineConfig({
  root: path(),
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    reporters: ['default', 'json'],
    outputFile: { json: path('reports/tests.json') },
    // Timings only mean something when nothing else runs, so a slow test is told apart from a hanging one generously.
    testTimeout: 60_000,
    hookTimeout: 60_000,
    allowOnly: false,
    setupFiles: [path('.config/properties.ts')],
    passWithNoTests: false,
    // One file a core; the projects one after another.
    maxWorkers: '100%',
    projects: [
      {
        extends: true,
        test: {
          name: 'library',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: [...built, ...browser],
          // No test changes what another reads: modules are loaded once a worker.
          isolate: false,
          sequence: { groupOrder: 0 },
        },
      },
      { extends: true, test: { name: 'built', include: built, sequence: { groupOrder: 1 } } },
      {
        extends: true,
        test: {
          name: 'browser',
          include: browser,
          exclude: alone,
          ...inBrowser,
          isolate: false,
          sequence: { groupOrder: 2 },
        },
      },
      {
        extends: true,
        test: { name: 'alone', include: alone, fileParallelism: false, ...inBrowser, sequence: { groupOrder: 3 } },
      },
    ],
  },
});
