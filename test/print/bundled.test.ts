import { chmod, lstat, mkdir, mkdtemp, readdir, rm, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { bundledBrowser } from '../../src/print/bundled.js';
import { versionOf } from '../../src/print/program.js';

const PRIVATE = { recursive: true, mode: 0o700 };
let cache: string;

beforeAll(async () => {
  cache = await mkdtemp(join(tmpdir(), 'benchleaf-cache-'));
});

afterEach(() => vi.unstubAllEnvs());

afterAll(() => rm(cache, { recursive: true }));

describe.runIf(process.platform === 'linux' && process.arch === 'x64')('bundledBrowser()', () => {
  it('unpacks into a private folder named after its version, whatever lies in the temporary one', async () => {
    const temporary = join(cache, 'tmp');
    await mkdir(temporary);
    // One that was being unpacked when its run was ended by force, long ago, and one that is being unpacked.
    for (const name of ['old', 'new'])
      await mkdir(join(cache, `benchleaf/chromium-146.0.0.part-${name}`), PRIVATE);
    await utimes(join(cache, 'benchleaf/chromium-146.0.0.part-old'), 1, 1);
    await writeFile(join(temporary, 'chromium'), 'a planted program');
    vi.stubEnv('TMPDIR', temporary);
    vi.stubEnv('XDG_CACHE_HOME', cache);
    const { path, env } = await bundledBrowser();
    expect(path).toMatch(new RegExp(`^${cache}/benchleaf/chromium-147\\.0\\.0/chromium$`));
    expect(await versionOf(path, env)).toMatch(/^Chromium 147\./);
    for (const folder of [dirname(path), join(cache, 'benchleaf')]) {
      expect((await lstat(folder)).mode & 0o777).toBe(0o700);
    }
    expect(await readdir(temporary)).toEqual(['chromium']);
    expect(await readdir(join(cache, 'benchleaf'))).toEqual([
      'chromium-146.0.0.part-new',
      'chromium-147.0.0',
    ]);
  });

  it('finds it again without unpacking', async () => {
    vi.stubEnv('XDG_CACHE_HOME', cache);
    const folder = dirname((await bundledBrowser()).path);
    const { mtimeMs } = await lstat(folder);
    await bundledBrowser();
    expect((await lstat(folder)).mtimeMs).toBe(mtimeMs);
  });

  it('survives several that start at once', async () => {
    const home = join(cache, 'race');
    vi.stubEnv('XDG_CACHE_HOME', home);
    const found = await Promise.all([bundledBrowser(), bundledBrowser(), bundledBrowser()]);
    expect(new Set(found.map(({ path }) => path)).size).toBe(1);
    expect(await readdir(join(home, 'benchleaf'))).toEqual(['chromium-147.0.0']);
  });

  it('uses neither a folder that others may write to, nor a home that cannot be written', async () => {
    vi.stubEnv('XDG_CACHE_HOME', cache);
    const folder = dirname((await bundledBrowser()).path);
    await chmod(folder, 0o777);
    const first = await bundledBrowser();
    expect(first.path).toMatch(new RegExp(`^${tmpdir()}/benchleaf-chromium-`));
    vi.stubEnv('XDG_CACHE_HOME', '/dev/null/none');
    const second = await bundledBrowser();
    expect(second.path).toBe(first.path); // unpacked once in a run
    expect(await versionOf(second.path, second.env)).toMatch(/^Chromium 147\./);
    await rm(dirname(first.path), { recursive: true });
  });
});
