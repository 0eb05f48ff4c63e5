import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { built } from './built.js';

let program: string;
let folder: string;
beforeAll(() => {
  program = built();
});
afterAll(() => rmSync(program, { recursive: true }));
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'benchleaf-stopped-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

/** Begins to deliver into a folder, in a process of its own, and then does what is told. */
async function begun(out: string, then: string) {
  const code = `
    import { writeFileSync } from 'node:fs';
    import { deliver } from '${program}/pack/delivery.js';
    import { tidily } from '${program}/pack/tidily.js';
    const say = (word) => process.stdout.write(word + ' ');
    const forEver = () => new Promise((resolve) => setTimeout(resolve, 600_000));
    await deliver(${JSON.stringify(out)}, async (tray) => {
      writeFileSync(tray.place('a.pdf'), 'new a');
      ${then}
    });
    say('delivered, heeding ' + process.listenerCount('SIGINT'));`;
  const child = spawn(process.execPath, ['--input-type=module', '-e', code]);
  let said = '';
  child.stdout.on('data', (data: Buffer) => {
    said += data;
  });
  child.stderr.on('data', (data: Buffer) => {
    said += data;
  });
  const ended = once(child, 'close').then(([status, signal]) => ({ status, signal, said: said.trim() }));
  await once(child.stdout, 'data');
  return { child, ended };
}

describe.runIf(process.platform !== 'win32')('a run that is stopped', () => {
  it.each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)('by %s leaves the folder as it was', async (signal) => {
    writeFileSync(join(folder, 'a.pdf'), 'old a');
    const { child, ended } = await begun(folder, `say('begun'); await forEver();`);
    expect(readdirSync(folder)).toHaveLength(2);
    child.kill(signal);
    expect(await ended).toEqual({ status: null, signal, said: 'begun' });
    expect(readdirSync(folder)).toEqual(['a.pdf']);
    expect(readFileSync(join(folder, 'a.pdf'), 'utf8')).toBe('old a');
  });

  it('leaves no folder where there was none', async () => {
    const { child, ended } = await begun(join(folder, 'season', 'out'), `say('begun'); await forEver();`);
    child.kill('SIGINT');
    expect((await ended).signal).toBe('SIGINT');
    expect(readdirSync(folder)).toEqual([]);
  });

  it('tidies up inside out, once, though Ctrl-C comes twice and the work fails of it', async () => {
    const { child, ended } = await begun(
      folder,
      `let fail;
       const work = () => new Promise((_, reject) => { fail = reject; say('begun'); setTimeout(forEver, 600_000); });
       await tidily(() => tidily(work, async () => {
         fail(new Error('taken away'));
         say('inner');
         await new Promise((resolve) => setTimeout(resolve, 300));
         say('inner-done');
       }), () => say('outer'));`,
    );
    child.kill('SIGINT');
    setTimeout(() => child.kill('SIGINT'), 100);
    expect(await ended).toEqual({ status: null, signal: 'SIGINT', said: 'begun inner inner-done outer' });
    expect(readdirSync(folder)).toEqual([]);
  });

  it('ends even when tidying up fails, or never ends', async () => {
    const { child, ended } = await begun(
      folder,
      `await tidily(() => tidily(async () => { say('begun'); await forEver(); }, () => { throw new Error('oh'); }), () => forEver());`,
    );
    child.kill('SIGTERM');
    expect((await ended).signal).toBe('SIGTERM');
  });

  it('heeds signals no longer than it has to', async () => {
    const { ended } = await begun(folder, `say('heeding ' + process.listenerCount('SIGINT'));`);
    expect(await ended).toEqual({ status: 0, signal: null, said: 'heeding 1 delivered, heeding 0' });
    expect(readdirSync(folder)).toEqual(['a.pdf']);
  });
});
