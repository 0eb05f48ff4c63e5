import { execFile } from 'node:child_process';
import { rmSync } from 'node:fs';
import { lstat, mkdir, mkdtemp, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { homedir, tmpdir } from 'node:os';
import { dirname, isAbsolute, join } from 'node:path';
import { promisify } from 'node:util';
import { MachineError } from '../diagnostics/errors.js';
import type { BrowserChoice } from './browser.js';
import { because } from './disk.js';
import { versionOf } from './program.js';

const PACKAGE = '@sparticuz/chromium';
const UNPACK = 'require(process.argv[1]).executablePath().catch(e => { throw e.message })';
const HOUR = 3_600_000;
const entry = createRequire(import.meta.url).resolve(PACKAGE);

/**
 * The browser inside `@sparticuz/chromium`, unpacked on first use (some 200 MB, two seconds).
 *
 * It sees no fonts but the ones that come with it, so that a sheet is the same on every machine. Libraries that
 * it expects of the machine (nss, nspr, expat) come with it too, and are used only where the machine has none.
 *
 * @throws {MachineError} when it cannot be unpacked or does not start
 */
export async function bundledBrowser(): Promise<BrowserChoice> {
  const folder = await unpackedFolder();
  const path = join(folder, 'chromium');
  const fonts = { FONTCONFIG_FILE: join(folder, 'fonts.conf') };
  const libraries = [join(folder, 'al2023', 'lib'), process.env.LD_LIBRARY_PATH].filter((at) => !!at);
  for (const env of [fonts, { ...fonts, LD_LIBRARY_PATH: libraries.join(':') }]) {
    if (await versionOf(path, env)) return { path, from: `inside ${PACKAGE}`, env };
  }
  throw new MachineError(`the bundled browser, ${path}, does not start on this machine`, [
    `Delete ${folder} and try again.`,
    'Or install Chrome or Chromium, or set BENCHLEAF_BROWSER to the path of one.',
  ]);
}

async function unpackedFolder(): Promise<string> {
  const { version } = JSON.parse(await readFile(join(dirname(entry), '../../package.json'), 'utf8'));
  const cache = process.env.XDG_CACHE_HOME ?? '';
  const home = isAbsolute(cache) ? cache : join(homedir(), '.cache');
  const folder = join(home, 'benchleaf', `chromium-${version}`);
  if (await isOurs(folder)) return folder;
  try {
    await mkdir(dirname(folder), { recursive: true, mode: 0o700 });
    return await unpackAside(folder);
  } catch {
    temporary ??= unpackForThisRun(); // home may be read-only, full, or somebody else's
    return temporary;
  }
}

/** Private and complete: the folder gets its name only when all is in it. */
async function isOurs(folder: string): Promise<boolean> {
  const found = await lstat(folder).catch(() => undefined);
  return !!found?.isDirectory() && found.uid === process.getuid?.() && (found.mode & 0o022) === 0;
}

async function unpackAside(folder: string): Promise<string> {
  await removeLeftOvers(folder);
  const aside = await mkdtemp(`${folder}.part-`);
  try {
    await unpack(aside, folder);
    await rename(aside, folder);
  } catch (error) {
    await rm(aside, { recursive: true, force: true });
    if (await isOurs(folder)) return folder; // another run was faster
    throw error;
  }
  return folder;
}

/** What a run that was ended by force had unpacked, 200 MB at most; one that is under way takes seconds. */
async function removeLeftOvers(folder: string): Promise<void> {
  const beside = dirname(folder);
  for (const name of await readdir(beside)) {
    const path = join(beside, name);
    if (!/^chromium-[\d.]+\.part-/.test(name) || !(await isOurs(path))) continue;
    const { mtimeMs } = await lstat(path);
    if (Math.abs(Date.now() - mtimeMs) > HOUR) await rm(path, { recursive: true, force: true });
  }
}

let temporary: Promise<string> | undefined;

async function unpackForThisRun(): Promise<string> {
  let folder = tmpdir();
  try {
    folder = await mkdtemp(join(folder, 'benchleaf-chromium-'));
    process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
    await unpack(folder, folder);
    return folder;
  } catch (error) {
    throw new MachineError(`cannot unpack the bundled browser into ${folder}: ${because(error)}`, [
      'Make room for 250 MB in your cache folder, or set XDG_CACHE_HOME to a folder that has it.',
      'Or set BENCHLEAF_BROWSER to the path of a browser.',
    ]);
  }
}

/**
 * The package unpacks into whatever is the temporary folder, and its libraries only where it believes to be on a
 * machine of the kind it was made for; so it runs in a process of its own that is told both.
 *
 * @param home the folder that `into` will be called in the end
 */
async function unpack(into: string, home: string): Promise<void> {
  const env = { ...process.env, TMPDIR: into, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs20.x' };
  await promisify(execFile)(process.execPath, ['-e', UNPACK, entry], { env }).catch(({ stderr }) => {
    throw Object.assign(new Error(stderr), { code: /E[A-Z]{3,}/.exec(stderr)?.[0] });
  });
  await writeFile(join(into, 'fonts.conf'), fontsConf(home));
}

function fontsConf(folder: string): string {
  const at = folder.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig><dir>${at}/fonts</dir><cachedir>${at}/fonts-cache</cachedir></fontconfig>
`;
}
