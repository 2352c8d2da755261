import { defineConfig } from 'vitest/config';

/** Unit, property and documentation tests. Browser tests have vitest.browser.config.ts. */
export default defineConfig({
  test: {
    include: [
      'packages/*/src/**/*.test.{ts,tsx}',
      'apps/*/src/**/*.test.{ts,tsx}',
      'scripts/**/*.test.ts',
    ],
    passWithNoTests: false,
  },
});
