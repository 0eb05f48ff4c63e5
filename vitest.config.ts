import { defineConfig } from 'vitest/config';

/** What changes the process that it runs in, or measures it, or works beside it, has one of its own for each file. */
const ALONE = ['test/calculations/door.test.ts', 'test/{cli,documents,hostile,pack,print}/**/*.test.ts'];

export default defineConfig({
  test: {
    globalSetup: ['test/practice/build-page.ts', 'test/cli/build-command.ts'],
    maxWorkers: 2, // by itself vitest leaves one processor of two idle
    projects: [
      { extends: true, test: { name: 'alone', include: ALONE } },
      // Reading the same modules again for every file took a fifth of all the time.
      {
        extends: true,
        test: { name: 'together', include: ['test/**/*.test.ts'], exclude: ALONE, isolate: false },
      },
    ],
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
