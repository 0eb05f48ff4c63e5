import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { homedir, tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

/**
 * Path of the browser inside @sparticuz/chromium, unpacked once into a private folder named after its version.
 * The package unpacks into TMPDIR and reuses whatever lies there, so it is given an empty private folder, which is
 * then renamed into place: never half-unpacked, never somebody else's file.
 */
export async function bundledBrowser(): Promise<string> {
  const cache = privateCache();
  const home = join(cache, `chromium-${packageVersion()}`);
  const path = join(home, 'chromium');
  if (existsSync(path)) return path;
  const unpacked = mkdtempSync(join(cache, 'unpack-'));
  const before = process.env.TMPDIR;
  process.env.TMPDIR = unpacked;
  try {
    const { default: chromium } = await import('@sparticuz/chromium');
    await chromium.executablePath();
    renameSync(unpacked, home);
  } catch (error) {
    rmSync(unpacked, { recursive: true, force: true });
    // Another process may have been first; then its copy serves.
    if (!existsSync(path)) throw error;
  } finally {
    if (before === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = before;
  }
  return path;
}

/** A folder that only this user can read: under the user's cache, or a fresh one where there is no home to write in. */
function privateCache(): string {
  const folder = join(process.env.XDG_CACHE_HOME || join(homedir(), '.cache'), 'benchleaf');
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    chmodSync(folder, 0o700);
    return folder;
  } catch {
    return mkdtempSync(join(tmpdir(), 'benchleaf-'));
  }
}

function packageVersion(): string {
  const entry = createRequire(import.meta.url).resolve('@sparticuz/chromium');
  let folder = dirname(entry);
  while (!existsSync(join(folder, 'package.json'))) folder = dirname(folder);
  const { name, version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as Record<
    string,
    string
  >;
  return name === '@sparticuz/chromium' ? (version ?? 'unknown') : 'unknown';
}
