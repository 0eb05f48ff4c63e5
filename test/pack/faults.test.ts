import { execFileSync } from 'node:child_process';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  truncateSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { verify } from '../../src/pack/verify.js';
import { cacheOf, entriesOf, FaultRuns, hashes, leftIn, setIn } from './fault-runs.js';

/** The soak ends two hundred such runs. */
const LEARNERS = 20;

let runs: FaultRuns;
let whole: Record<string, string>;
/** Whole, and nobody does anything to it. */
let reference: string;
beforeAll(async () => {
  runs = new FaultRuns(LEARNERS);
  reference = join(runs.folder, 'reference');
  expect(await runs.make(reference)).toEqual({ printed: LEARNERS, kept: 0 });
  whole = hashes(setIn(reference));
  expect(Object.keys(whole)).toHaveLength(LEARNERS + 1);
}, 240_000);
afterAll(() => rmSync(runs.folder, { recursive: true, force: true }));

/** A folder as the reference is, with its cache. */
function copied(name: string): string {
  const out = join(runs.folder, name);
  execFileSync('cp', ['-a', reference, out]);
  return out;
}

/** Waits until a run has kept so many documents. */
async function untilKept(out: string, count: number): Promise<void> {
  while (entriesOf(out).length < count) await sleep(5);
}

describe.runIf(process.platform !== 'win32')('a run that is ended at a random point', () => {
  it.each(['SIGKILL', 'SIGINT'] as const)(
    'by %s leaves nothing half-written, and the next does what is missing',
    async (signal) => {
      const out = join(runs.folder, signal);
      for (;;) {
        const run = runs.begin(out);
        await untilKept(out, 1 + Math.floor(Math.random() * (LEARNERS - 8)));
        run.stop(signal);
        const { code, signal: by } = await run.ended;
        if (by === signal) break;
        expect(code).toBe(0); // it was done before it heard
        rmSync(out, { recursive: true });
      }
      expect(hashes(setIn(out))).toEqual({});
      expect(leftIn(setIn(out))).toHaveLength(signal === 'SIGKILL' ? 1 : 0);
      const before = entriesOf(out).length;
      expect(await runs.make(out)).toEqual({ printed: LEARNERS - before, kept: before });
      expect(hashes(setIn(out))).toEqual(whole);
      expect(leftIn(setIn(out))).toEqual([]);
    },
    120_000,
  );
});

describe.runIf(process.platform !== 'win32')('two runs into one folder', () => {
  it('do not mix: one says who is there, and does nothing', async () => {
    const out = copied('two');
    rmSync(cacheOf(out), { recursive: true });
    const first = runs.begin(out, '--quiet');
    await untilKept(out, 1);
    first.stop('SIGSTOP'); // it is there, however long the second takes to begin
    const second = await runs.begin(out, '--quiet', '--paper', 'letter').ended;
    first.stop('SIGCONT');
    expect(second).toMatchObject({ code: 3, out: '' });
    expect(second.err).toMatch(
      new RegExp(`another run is making documents in .+gears: process ${first.pid}, begun on .+ Wait until`),
    );
    expect((await first.ended).code).toBe(0);
    expect(hashes(setIn(out))).toEqual(whole);
    expect(leftIn(setIn(out))).toEqual([]);
  }, 120_000);

  it('do not mix when they begin at the same moment', async () => {
    const out = copied('same-moment');
    const ended = await Promise.all([1, 2].map(() => runs.begin(out, '--quiet').ended));
    expect(ended.filter(({ code }) => code === 0).length).toBeGreaterThanOrEqual(1);
    for (const { code, err } of ended)
      expect([code, err]).toEqual(code === 0 ? [0, ''] : [3, expect.stringContaining('another run')]);
    expect(hashes(setIn(out))).toEqual(whole);
    expect(leftIn(setIn(out))).toEqual([]);
  }, 120_000);

  it('but other parts of one set get along, and together are the whole', async () => {
    const out = copied('parts');
    rmSync(setIn(out), { recursive: true });
    const parts = ['1/3', '2/3', '3/3'];
    const ended = await Promise.all(parts.map((part) => runs.begin(out, '--quiet', '--shard', part).ended));
    expect(ended.map(({ code }) => code)).toEqual([0, 0, 0]);
    expect(await verify(setIn(out))).toMatchObject({ whole: true, shards: 3, documents: LEARNERS });
    expect(hashes(setIn(out))).toMatchObject(withoutLists(whole));
  }, 120_000);
});

const withoutLists = (files: Record<string, string>) =>
  Object.fromEntries(Object.entries(files).filter(([name]) => !name.startsWith('packing-list')));

describe('what was kept', () => {
  it('is not believed when it is corrupted, cut short, or in the place of another', async () => {
    const out = copied('corrupted');
    const [flipped = '', cut = '', one = '', other = ''] = entriesOf(out).map((name) =>
      join(cacheOf(out), name),
    );
    const bytes = readFileSync(flipped);
    bytes[bytes.length >> 1] = (bytes[bytes.length >> 1] ?? 0) ^ 1;
    // What is delivered has the same file: it is written anew, as a disk that fails would not.
    for (const file of [flipped, cut, one, other]) copyFileSync(file, `${file}.aside`);
    writeFileSync(`${flipped}.aside`, bytes);
    truncateSync(`${cut}.aside`, 1000);
    for (const file of [flipped, cut]) renameSync(`${file}.aside`, file);
    renameSync(`${one}.aside`, other);
    renameSync(`${other}.aside`, one);
    expect(await runs.make(out)).toEqual({ printed: 4, kept: LEARNERS - 4 });
    expect(hashes(setIn(out))).toEqual(whole);
  }, 120_000);

  it('serves whatever the clock says', async () => {
    const out = copied('clock');
    const [tomorrow, long] = [Date.now() / 1000 + 90_000, Date.now() / 1000 + 4e8];
    for (const name of entriesOf(out)) utimesSync(join(cacheOf(out), name), long, long);
    for (const name of readdirSync(join(setIn(out), 'problems')))
      utimesSync(join(setIn(out), 'problems', name), tomorrow, tomorrow);
    // Half of it was used, as it seems, on a day that is to come, and half in 1970.
    for (const [at, name] of entriesOf(out).entries())
      renameSync(join(cacheOf(out), name), join(cacheOf(out), name.replace(/\d+$/, at % 2 ? '99999' : '0')));
    expect(await runs.make(out)).toEqual({ printed: 0, kept: LEARNERS });
    expect(hashes(setIn(out))).toEqual(whole);
    expect(entriesOf(out)).toEqual(entriesOf(reference));
  }, 120_000);

  it('is not used, and nothing is kept, when that is asked', async () => {
    const out = copied('none-kept');
    const before = entriesOf(out);
    expect(await runs.make(out, '--shard', '1/10', '--no-cache')).toEqual({ printed: 2, kept: 0 });
    expect(entriesOf(out)).toEqual(before);
    const other = join(runs.folder, 'none-made');
    expect(await runs.make(other, '--shard', '1/20', '--no-cache')).toEqual({ printed: 1, kept: 0 });
    expect(existsSync(join(other, '.cache'))).toBe(false);
  }, 120_000);

  it('is printed anew where it changes, and there alone', async () => {
    const out = copied('edit');
    const names = readFileSync(runs.learners, 'utf8');
    writeFileSync(runs.learners, names.replace('Learner 15\n', 'Learner Fifteen\n'));
    try {
      expect(await runs.make(out)).toEqual({ printed: 1, kept: LEARNERS - 1 });
      expect((await verify(setIn(out))).findings).toEqual([
        expect.objectContaining({ what: 'extra', file: 'problems/15-learner-15.pdf' }),
      ]);
    } finally {
      writeFileSync(runs.learners, names);
    }
  }, 120_000);
});

describe('a disk', () => {
  /** Mounts a small disk; where that is not permitted there is nothing to test with. */
  const mounted = (at: string, options: string): boolean => {
    mkdirSync(at);
    try {
      execFileSync('mount', ['-t', 'tmpfs', '-o', options, 'tmpfs', at], { stdio: 'ignore' });
      return true;
    } catch {
      return false;
    }
  };
  const remounted = (at: string, options: string) =>
    execFileSync('mount', ['-o', `remount,${options}`, at], { stdio: 'ignore' });

  it('that is full stops a run with a line; with more room the next does what is missing', async ({
    skip,
  }) => {
    const out = join(runs.folder, 'full');
    if (!mounted(out, 'size=60m')) skip('a small disk cannot be mounted here');
    try {
      const run = runs.begin(out, '--quiet');
      await untilKept(out, 4);
      run.stop('SIGSTOP'); // it is not done, however long the filling takes
      const ballast = join(out, 'ballast');
      expect(() => writeFileSync(ballast, Buffer.alloc(60 << 20))).toThrow('ENOSPC');
      run.stop('SIGCONT');
      const { code, err } = await run.ended;
      expect([code, err]).toEqual([3, expect.stringMatching(/cannot write .+: the disk is full/)]);
      expect(hashes(setIn(out))).toEqual({});
      expect(leftIn(setIn(out))).toEqual([]);
      const before = entriesOf(out).length;
      rmSync(ballast);
      expect(await runs.make(out)).toEqual({ printed: LEARNERS - before, kept: before });
      expect(hashes(setIn(out))).toEqual(whole);
    } finally {
      execFileSync('umount', ['-l', out]);
    }
  }, 120_000);

  it('that can only be read is told of, and keeps what it has', async ({ skip }) => {
    const out = join(runs.folder, 'read-only');
    if (!mounted(out, 'size=90m')) skip('a small disk cannot be mounted here');
    try {
      execFileSync('cp', ['-a', `${reference}/.`, out]);
      remounted(out, 'ro');
      const { code, err } = await runs.begin(out, '--quiet').ended;
      expect([code, err]).toEqual([3, expect.stringMatching(/that disk can only be read\. Name another/)]);
      expect(hashes(setIn(out))).toEqual(whole);
      expect((await verify(setIn(out))).whole).toBe(true);
    } finally {
      execFileSync('umount', ['-l', out]);
    }
  }, 120_000);
});
