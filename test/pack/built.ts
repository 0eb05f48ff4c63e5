import { execFileSync } from 'node:child_process';
import { chmodSync, mkdtempSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

/**
 * Builds the program as it is now, for tests that need it in a process of its own: one that is stopped, or has a
 * terminal, or is another user's.
 *
 * @returns a folder of JavaScript files, as in `src`
 */
export function built(): string {
  const folder = mkdtempSync(join(tmpdir(), 'benchleaf-built-'));
  chmodSync(folder, 0o755);
  const compiler = 'node_modules/typescript/bin/tsc';
  execFileSync(process.execPath, [compiler, '-p', 'tsconfig.build.json', '--noCheck', '--outDir', folder]);
  symlinkSync(resolve('node_modules'), join(folder, 'node_modules'));
  return folder;
}
