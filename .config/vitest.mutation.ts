import { defineConfig } from 'vitest/config';
import { browser, built } from './vitest.config.js';

// Mutation testing changes the source: only the tests that run on the source can tell.
export default defineConfig({
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: [...built, ...browser, 'tests/manifest/**', 'tests/repository/**'],
  },
});
