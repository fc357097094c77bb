import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Tests that start servers, or put something else in a module's place, by folder: a process for each file. */
const WITH_SERVERS = ['faults', 'load', 'rooms'];

const patient = { testTimeout: 60_000, hookTimeout: 60_000 } as const;

// Browser tests end in .browser.ts, so that no other project collects them.
export default defineConfig({
  root,
  test: {
    // Much of a test waits for servers and pages, so that one file at a time leaves two cores half idle.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    pool: 'forks',
    reporters: ['default', fileURLToPath(new URL('./closing-line.ts', import.meta.url))],
    projects: [
      {
        root,
        test: {
          ...patient,
          name: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: ['bench', 'long', ...WITH_SERVERS].map((folder) => `tests/${folder}/**`),
          // What is pure needs no process of its own: loading the engine for each file took most of the time.
          isolate: false,
        },
      },
      {
        root,
        test: {
          ...patient,
          name: 'servers',
          include: WITH_SERVERS.map((folder) => `tests/${folder}/**/*.test.ts`),
        },
      },
      {
        root,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.browser.ts'],
          globalSetup: ['tests/browser/set-up.ts'],
          isolate: false,
          // Two browsers on two cores: a page that came too late for a step is opened anew, once.
          retry: 1,
          testTimeout: 180_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
