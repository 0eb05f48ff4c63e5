import { defineConfig } from 'vitest/config';

/** Hours of what `npm test` does minutes of. */
export default defineConfig({
  test: {
    globalSetup: ['test/cli/build-command.ts'],
    include: ['test/soak/*.soak.ts', 'test/exchange/drawn.test.ts'],
    env: { BENCHLEAF_SOAK: '1' },
  },
});
