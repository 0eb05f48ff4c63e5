import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync, truncateSync, utimesSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, afterEach, expect, it, vi } from 'vitest';
import { bundledBrowser } from '../../src/print/bundled.js';
import { versionOf } from '../../src/print/program.js';

const cache = mkdtempSync(join(tmpdir(), 'benchleaf-half-'));
const place = join(cache, 'benchleaf');
const parts = (): string[] =>
  existsSync(place) ? readdirSync(place).filter((name) => name.includes('.part-')) : [];

afterEach(() => vi.unstubAllEnvs());
afterAll(() => rmSync(cache, { recursive: true }));

it.runIf(process.platform === 'linux' && process.arch === 'x64')(
  'a browser that was half unpacked when the run was ended by force is unpacked anew; one that is cut short is told of',
  async () => {
    const words = ['make', 'sheet:trains', '--out', join(cache, 'out')];
    const run = spawn(process.execPath, [resolve('dist/cli/main.js'), ...words], {
      env: { PATH: '', HOME: cache, XDG_CACHE_HOME: cache, PUPPETEER_CACHE_DIR: cache },
      stdio: 'ignore',
      detached: true,
    });
    const ended = new Promise((done) => run.on('close', done));
    const begun = (): boolean => parts().some((name) => existsSync(join(place, name, 'chromium')));
    while (!begun() && run.exitCode === null) await sleep(5);
    process.kill(-(run.pid ?? 0), 'SIGKILL'); // with the process that unpacks
    await ended;
    expect(readdirSync(place)).toEqual([expect.stringContaining('.part-')]);

    vi.stubEnv('XDG_CACHE_HOME', cache);
    const long = new Date('2001-01-01');
    for (const name of parts()) utimesSync(join(place, name), long, long);
    const { path, env } = await bundledBrowser();
    expect(await versionOf(path, env)).toMatch(/^Chromium \d/);
    expect(readdirSync(place)).toEqual([expect.stringMatching(/^chromium-[\d.]+$/)]);

    truncateSync(path, 50_000_000);
    await expect(bundledBrowser()).rejects.toMatchObject({
      name: 'MachineError',
      message: `the bundled browser, ${path}, does not start on this machine`,
      hints: [`Delete ${dirname(path)} and try again.`, expect.any(String)],
    });
  },
);
