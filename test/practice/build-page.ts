import { build } from 'vite';

/** The practice page's program as the sources are now. */
export async function setup(): Promise<void> {
  await build({ configFile: 'vite.config.ts', logLevel: 'error' });
}
