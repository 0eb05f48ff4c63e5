import { chmod, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { MachineError } from '../../src/diagnostics/errors.js';
import { type BrowserChoice, findBrowser } from '../../src/print/browser.js';
import { workFolder } from './sample-page.js';

let work: string;
let real: BrowserChoice;

beforeEach(async () => {
  work = await workFolder();
  real = await findBrowser();
});

afterEach(async () => {
  vi.restoreAllMocks();
  vi.resetModules();
  await rm(work, { recursive: true });
});

/** The real browser behind a script that may refuse to start it. */
async function behind(script: string): Promise<BrowserChoice> {
  const path = join(work, 'browser');
  await writeFile(path, `#!/bin/sh\n${script}\nexec "${real.path}" "$@"\n`);
  await chmod(path, 0o755);
  return { ...real, path };
}

/** As for an ordinary user, whoever runs the tests. */
async function launchAsUser(choice: BrowserChoice) {
  vi.spyOn(process, 'getuid').mockReturnValue(1000);
  const { launch } = await import('../../src/print/launch.js');
  return launch(choice, join(work, 'profile'));
}

describe.runIf(process.platform === 'linux')('launch(choice, profile)', () => {
  it('leaves the sandbox off only after the kernel has forbidden it', async () => {
    const said = join(work, 'said');
    const browser = await launchAsUser(
      await behind(`
        echo "$@" >> "${said}"
        case "$*" in *--no-sandbox*) ;; *) echo "FATAL: No usable sandbox!" >&2; exit 1 ;; esac`),
    );
    const starts = (await readFile(said, 'utf8')).trim().split('\n');
    expect(starts.map((args) => args.includes('--no-sandbox'))).toEqual([false, false, true]);
    expect(browser.connected).toBe(true);
    await browser.close();
  });

  it.each([
    ['exit 1', /does not start/, undefined],
    [
      'echo "x: error while loading shared libraries: libnss3.so: cannot open" >&2; exit 127',
      /libnss3/,
      /libnss3\.so/,
    ],
  ])('says why a browser does not start: %s', async (script, message, hint) => {
    const failure = launchAsUser(await behind(script));
    await expect(failure).rejects.toMatchObject({ name: 'MachineError' });
    await expect(failure).rejects.toThrow(message);
    const { hints } = (await failure.catch((error: unknown) => error)) as MachineError;
    expect(hints.at(-1)).toContain('BENCHLEAF_BROWSER');
    if (hint) expect(hints[0]).toMatch(hint);
  });
});
