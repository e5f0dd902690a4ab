import { defineConfig } from 'vitest/config';
import { path } from './paths.js';

// Tests of what a build makes, and tests in a browser; everything else runs on the source.
export const built = ['tests/host/**/*.test.ts', 'tests/built/**/*.test.ts'];
export const browser = ['tests/e2e/**/*.test.ts'];

export default defineConfig({
  root: path(),
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    reporters: ['default', 'json'],
    outputFile: { json: path('reports/tests.json') },
    // Timings only mean something when nothing else runs, so a slow test is told apart from a hanging one generously.
    testTimeout: 20_000,
    allowOnly: false,
    setupFiles: [path('.config/properties.ts')],
    passWithNoTests: false,
    projects: [
      {
        extends: true,
        test: { name: 'library', include: ['tests/**/*.test.{ts,tsx}'], exclude: [...built, ...browser] },
      },
      { extends: true, test: { name: 'built', include: built } },
      {
        extends: true,
        test: {
          name: 'browser',
          include: browser,
          globalSetup: path('.config/browser-setup.ts'),
          testTimeout: 60_000,
          hookTimeout: 60_000,
          // What a page shows after a moment may take it longer on a busy machine.
          expect: { poll: { timeout: 10_000 } },
          // One page of the grid keeps a core busy.
          fileParallelism: false,
          // A page on a busy machine may miss one wait; a fault fails twice.
          retry: process.env.CI ? 1 : 0,
        },
      },
    ],
  },
});
