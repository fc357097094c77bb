import { defineConfig } from 'vitest/config';

// Browser tests end in .browser.ts, so that neither runner collects the other's files.
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['**/node_modules/**', 'tests/bench/**', 'tests/long/**'],
    testTimeout: 30_000,
    hookTimeout: 60_000,
    pool: 'forks',
  },
});
