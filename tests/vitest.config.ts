import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

// Browser tests end in .browser.ts, so that neither project collects the other's files.
export default defineConfig({
  root,
  test: {
    reporters: ['default', fileURLToPath(new URL('./closing-line.ts', import.meta.url))],
    projects: [
      {
        root,
        test: {
          name: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/bench/**', 'tests/long/**'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
          pool: 'forks',
        },
      },
      {
        root,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.browser.ts'],
          globalSetup: ['tests/browser/set-up.ts'],
          testTimeout: 180_000,
          hookTimeout: 120_000,
          pool: 'forks',
          fileParallelism: false,
        },
      },
    ],
  },
});
