import { defineConfig } from 'vitest/config';

/** Browser tests: the built app in Chromium, one file after another. */
export default defineConfig({
  test: {
    include: ['apps/web/e2e/**/*.e2e.ts'],
    globalSetup: ['apps/web/e2e/build-once.ts'],
    pool: 'forks',
    maxWorkers: 1,
    fileParallelism: false,
    // A cold Chromium on a slow machine takes seconds to start; a hang should still end the run.
    testTimeout: 60_000,
    hookTimeout: 60_000,
    passWithNoTests: false,
  },
});
