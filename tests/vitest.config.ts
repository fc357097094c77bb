import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

// Browser tests end in .browser.ts, so that neither project collects the other's files.
export default defineConfig({
  root,
  test: {
    // Much of a test waits for servers and pages, so that one file at a time leaves two cores half idle.
    maxWorkers: Math.max(2, availableParallelism() - 1),
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
          // Two browsers on two cores: a page that came too late for a step is opened anew, once.
          retry: 1,
          testTimeout: 180_000,
          hookTimeout: 120_000,
          pool: 'forks',
        },
      },
    ],
  },
});
