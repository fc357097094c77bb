import { defineConfig } from 'vitest/config';

const folders = process.env.MUTATED ?? 'rules,odds,goals,points';

/** The tests that small changes of the engine have to get past. The root is the copy that holds the changes. */
export default defineConfig({
  test: {
    include: folders.split(',').map((folder) => `tests/unit/${folder}/**/*.test.ts`),
    testTimeout: 60_000,
  },
});
