import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    globalSetup: ['test/practice/build-page.ts', 'test/cli/build-command.ts'],
    maxWorkers: 2, // by itself vitest leaves one processor of two idle
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
