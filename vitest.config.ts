import { defineConfig } from 'vitest/config';

/** Unit, property and documentation tests. Browser tests have vitest.browser.config.ts. */
export default defineConfig({
  test: {
    setupFiles: ['./vitest.setup.ts'],
    include: [
      'packages/*/src/**/*.test.{ts,tsx}',
      'apps/*/src/**/*.test.{ts,tsx}',
      'scripts/**/*.test.ts',
    ],
    // Tests that start programs, or run many draws, share two cores with all the others; a hang still ends.
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // Files that follow each other in one process share what they import, which halves what all take.
    // Their tests leave nothing behind in it: no module here keeps what a caller gave it.
    isolate: false,
    // Left to itself, Vitest keeps one of two cores free.
    maxWorkers: '100%',
    passWithNoTests: false,
  },
});
