import { build } from 'vite';

/** The command as the sources are now, for tests that run it as users do. */
export async function setup(): Promise<void> {
  await build({ configFile: 'vite.command.config.ts', logLevel: 'error' });
}
