import { execFileSync, spawn } from 'node:child_process';
import {
  appendFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { MachineError } from '../../src/diagnostics/errors.js';
import { claim } from '../../src/pack/claim.js';
import { makeRunFolder, otherRuns, type Task } from '../../src/pack/run-folder.js';
import { lifeOf, thisWorker, type Worker } from '../../src/pack/worker.js';

const TASK: Task = { set: 'a', shard: 1, of: 1 };
const QUICK = { beat: 20, silence: 300, asking: 2000 };

let folder: string;
const releases: (() => void)[] = [];
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'benchleaf-claim-'));
});
afterEach(() => {
  for (const release of releases.splice(0)) release();
  rmSync(folder, { recursive: true });
});

/** Asks for the folder as a run does; the claim is given up when the test ends. */
async function ask(task = TASK): Promise<string> {
  const own = makeRunFolder(folder, task);
  try {
    releases.push(await claim({ folder, own, shown: 'out' }, task, QUICK));
    return own;
  } catch (error) {
    rmSync(own, { recursive: true });
    throw error;
  }
}

/** Puts the folder of another run there, as that run would have. */
function other(worker: Partial<Worker>, task = TASK): string {
  const path = join(folder, `.benchleaf-making-${Math.random().toString(36).slice(2, 8)}`);
  mkdirSync(path);
  writeFileSync(
    join(path, 'run.json'),
    `${JSON.stringify({ worker: { ...thisWorker(), ...worker }, task })}\n`,
  );
  writeFileSync(join(path, 'working'), '');
  return path;
}

/** The number of a process that has ended. */
const deadProcess = (): number =>
  Number(execFileSync(process.execPath, ['-p', 'process.pid'], { encoding: 'utf8' }));

describe('claim(folder)', () => {
  it('gives the folder to one run at a time', async () => {
    await ask();
    const refused = ask().catch((error: unknown) => error);
    expect(await refused).toBeInstanceOf(MachineError);
    expect(await refused).toMatchObject({
      exitCode: 3,
      message: expect.stringContaining(
        `another run is making documents in out: process ${process.pid}, begun on `,
      ),
    });
  });

  it.each([
    ['another set', { ...TASK, set: 'b' }],
    ['the same shard', { set: 'a', shard: 2, of: 3 }],
    ['another division', { set: 'a', shard: 3, of: 4 }],
  ])('refuses %s', async (_, task) => {
    await ask({ set: 'a', shard: 2, of: 3 });
    await expect(ask(task)).rejects.toThrow('another run');
  });

  it('lets other shards of the set in', async () => {
    await ask({ set: 'a', shard: 2, of: 3 });
    await ask({ set: 'a', shard: 1, of: 3 });
    await ask({ set: 'a', shard: 3, of: 3 });
    expect(readdirSync(folder)).toHaveLength(3);
  });

  it('gives it to one of many that ask at the same moment, each time', async () => {
    for (let round = 0; round < 10; round++) {
      const asked = await Promise.allSettled(Array.from({ length: 6 }, () => ask()));
      expect(asked.filter(({ status }) => status === 'fulfilled')).toHaveLength(1);
      for (const release of releases.splice(0)) release();
      for (const name of readdirSync(folder)) rmSync(join(folder, name), { recursive: true });
    }
  });

  it('takes over from a dead process at once, and from one whose number another has now', async () => {
    const dead = other({ pid: deadProcess() });
    await ask();
    expect(existsSync(dead)).toBe(false);
    if (thisWorker().born === '') return; // this system does not tell
    const reused = other({ born: '1' });
    await ask({ set: 'a', shard: 1, of: 1 }).catch(() => undefined);
    expect(existsSync(reused)).toBe(false);
  });

  it.each([
    ['on another machine', { host: `not-${hostname()}` }],
    ['in another container', { space: 'pid:[1]' }],
    ['before this machine was last started', { boot: 'another' }],
  ])('believes a run %s for as long as it gives signs, whatever its number', async (_, where) => {
    const away = other({ pid: 999_999_999, ...where });
    const signs = setInterval(() => appendFileSync(join(away, 'run.json'), '.'), 20);
    try {
      const refused = await ask().catch((error: Error) => error);
      expect(refused).toMatchObject({ message: expect.stringContaining('another run') });
    } finally {
      clearInterval(signs);
    }
    const begun = performance.now();
    await ask(); // and takes over when there are no more
    expect(performance.now() - begun).toBeGreaterThanOrEqual(QUICK.silence);
    expect(existsSync(away)).toBe(false);
  });

  it('names the machine of another', async () => {
    const away = other({ host: 'bench-pc', pid: 12 });
    const signs = setInterval(() => appendFileSync(join(away, 'run.json'), '.'), 20);
    await expect(ask()).rejects.toThrow('process 12 on the machine bench-pc, begun on');
    clearInterval(signs);
  });

  it('gives signs of its own for as long as it has the folder', async () => {
    const own = await ask();
    const beats = () => otherRuns(folder, '')[0]?.beats ?? 0;
    const before = beats();
    while (beats() < before + 3) await new Promise((resolve) => setTimeout(resolve, 10));
    rmSync(own, { recursive: true });
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(existsSync(own)).toBe(false); // and does not come back when it was taken for dead
  });
});

describe('lifeOf(process)', () => {
  it('knows this one, and one that has ended', () => {
    expect(lifeOf(thisWorker())).toBe('alive');
    expect(lifeOf({ ...thisWorker(), pid: deadProcess() })).toBe('dead');
  });

  it.runIf(process.platform === 'linux')(
    'counts one as dead that has ended and was not yet asked after',
    async () => {
      // The shell starts a process, becomes another program, and never asks after it.
      const parent = spawn('sh', ['-c', 'sleep 0 & echo $!; exec sleep 60'], {
        stdio: ['ignore', 'pipe', 'ignore'],
      });
      try {
        const pid = Number(await new Promise((resolve) => parent.stdout.once('data', resolve)));
        const born = thisWorker().born;
        while (lifeOf({ ...thisWorker(), pid, born }) !== 'dead')
          await new Promise((resolve) => setTimeout(resolve, 10));
        expect(existsSync(`/proc/${pid}`)).toBe(true);
      } finally {
        parent.kill();
      }
    },
  );
});
