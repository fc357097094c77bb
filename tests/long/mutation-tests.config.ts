import { defineConfig } from 'vitest/config';

/** The tests that small changes of the engine have to get past. The root is the copy that holds the changes. */
export default defineConfig({
  test: {
    include: ['rules', 'odds', 'goals', 'points'].map((folder) => `tests/unit/${folder}/**/*.test.ts`),
    testTimeout: 60_000,
  },
});
