import { chmod, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { MachineError } from '../../src/diagnostics/errors.js';
import { findBrowser } from '../../src/print/browser.js';

let machine: string;
let cache: string;

/** A program that, asked for its version, answers as a browser does. */
async function install(path: string, version = 'Chromium 150.0.1.2', more = ''): Promise<string> {
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, `#!/bin/sh\n${more}\necho "${version}"\n`);
  await chmod(path, 0o755);
  return path;
}

beforeAll(async () => {
  cache = await mkdtemp(join(tmpdir(), 'benchleaf-cache-'));
});

// puppeteer reads its settings once, so its folder is the same for every test here and only its content changes.
vi.hoisted(() => {
  process.env.PUPPETEER_CACHE_DIR = `${process.env.TMPDIR ?? '/tmp'}/benchleaf-puppeteer-${process.pid}`;
});
const puppeteerFolder = process.env.PUPPETEER_CACHE_DIR as string;

beforeEach(async () => {
  machine = await mkdtemp(join(tmpdir(), 'benchleaf-machine-'));
  vi.stubEnv('PATH', `${machine}/bin:${machine}/more`);
  vi.stubEnv('XDG_CACHE_HOME', cache);
  vi.stubEnv('BENCHLEAF_BROWSER', '');
});

afterEach(async () => {
  vi.unstubAllEnvs();
  await rm(machine, { recursive: true });
  await rm(puppeteerFolder, { recursive: true, force: true });
});

afterAll(() => rm(cache, { recursive: true }));

/** Where puppeteer would have put the browser that belongs to it. */
async function placeOfPuppeteers(): Promise<string> {
  const { default: puppeteer } = await import('puppeteer');
  const path = puppeteer.executablePath({ browser: 'chrome', headless: 'shell' });
  expect(path).toContain(puppeteerFolder);
  return path;
}

describe.runIf(process.platform === 'linux' && process.arch === 'x64')('findBrowser()', () => {
  it('takes BENCHLEAF_BROWSER before all others', async () => {
    const named = await install(join(machine, 'mine'));
    vi.stubEnv('BENCHLEAF_BROWSER', named);
    await install(await placeOfPuppeteers());
    await install(join(machine, 'bin/google-chrome'));
    expect(await findBrowser()).toEqual({ path: named, from: 'BENCHLEAF_BROWSER' });
  });

  it('refuses a BENCHLEAF_BROWSER that cannot be run, rather than take another', async () => {
    await install(join(machine, 'bin/google-chrome'));
    for (const wrong of [join(machine, 'none'), join(machine, 'bin')]) {
      vi.stubEnv('BENCHLEAF_BROWSER', wrong);
      await expect(findBrowser()).rejects.toThrow(MachineError);
      await expect(findBrowser()).rejects.toThrow(wrong);
    }
  });

  it('takes one that puppeteer has installed before one of the machine', async () => {
    const path = await install(await placeOfPuppeteers());
    await install(join(machine, 'bin/google-chrome'));
    expect(await findBrowser()).toEqual({ path, from: 'installed by puppeteer' });
  });

  it('takes one of the machine before the bundled one', async () => {
    const path = await install(join(machine, 'more/chromium'));
    expect(await findBrowser()).toEqual({ path, from: 'on this machine' });
  });

  it.each([
    ['too old to set running heads', 'Chromium 130.0.1.2', ''],
    ['that does not start', '', 'exit 1'],
    ['that is a snap and sees no temporary files', 'Chromium 150.0.1.2', '# exec /snap/bin/chromium'],
  ])('passes over a browser of the machine %s', async (_, version, more) => {
    await install(join(machine, 'bin/google-chrome'), version, more);
    const path = await install(join(machine, 'bin/microsoft-edge'), 'Microsoft Edge 150.0.1.2');
    expect(await findBrowser()).toEqual({ path, from: 'on this machine' });
  });

  it('takes the bundled one when there is no other', async () => {
    const { path, from } = await findBrowser();
    expect(from).toBe('inside @sparticuz/chromium');
    expect(path).toMatch(new RegExp(`^${cache}/benchleaf/chromium-[0-9.]+/chromium$`));
  });
});
