import { execFile } from 'node:child_process';
import { constants } from 'node:fs';
import { access, stat } from 'node:fs/promises';

/** Is this a file that can be run? */
export async function isProgram(path: string): Promise<boolean> {
  try {
    await access(path, constants.X_OK);
    return (await stat(path)).isFile();
  } catch {
    return false;
  }
}

/** What `--version` prints, `Chromium 147.0.7727.0`; empty when the program does not start. */
export function versionOf(path: string, env: Record<string, string> = {}): Promise<string> {
  return new Promise((resolve) => {
    const options = { env: { ...process.env, ...env }, timeout: 20_000 };
    execFile(path, ['--version'], options, (error, stdout) => resolve(error ? '' : stdout.trim()));
  });
}

/** The major version in `HeadlessChrome/147.0.7727.0` or `Chromium 147.0.7727.0`; 0 when there is none. */
export function majorIn(version: string): number {
  return Number(/(\d+)\.\d+\.\d+/.exec(version)?.[1] ?? 0);
}
