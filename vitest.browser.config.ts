import { defineConfig } from 'vitest/config';

/** Browser tests: the built app in Chromium, two files at a time. */
export default defineConfig({
  test: {
    include: ['apps/web/e2e/**/*.e2e.ts'],
    globalSetup: ['apps/web/e2e/build-once.ts'],
    pool: 'forks',
    maxWorkers: 2,
    // A cold Chromium on a slow machine takes seconds to start; a hang should still end the run.
    testTimeout: 60_000,
    hookTimeout: 60_000,
    passWithNoTests: false,
  },
});
