import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { MachineError } from '../../src/diagnostics/errors.js';
import { deliver, type Tray } from '../../src/pack/delivery.js';
import { writeWhole } from '../../src/print/disk.js';

let folder: string;
let out: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'benchleaf-delivery-'));
  out = join(folder, 'out');
});

afterEach(() => rmSync(folder, { recursive: true }));

/** Every file below a folder, hidden ones too, with what it holds. */
function files(below = folder): Record<string, string> {
  const names = readdirSync(below, { recursive: true, encoding: 'utf8' }).sort();
  return Object.fromEntries(
    names.map((name) => {
      const path = join(below, name);
      return [name, statSync(path).isDirectory() ? 'folder' : readFileSync(path, 'utf8')];
    }),
  );
}

const write = (tray: Tray, documents: Record<string, string>) => {
  for (const [name, text] of Object.entries(documents)) writeFileSync(tray.place(name), text);
};

const making = (documents: Record<string, string>) => async (tray: Tray) => write(tray, documents);

async function failure(work: Promise<unknown>): Promise<MachineError> {
  const error = await work.then(
    () => undefined,
    (reason: unknown) => reason,
  );
  expect(error).toBeInstanceOf(MachineError);
  return error as MachineError;
}

const refused = (why: string) =>
  expect.objectContaining({ message: `cannot write into the folder ${out}: ${why}`, exitCode: 3 });
const untouched = async () => expect.unreachable('work was begun');

describe('deliver(out, make)', () => {
  it('puts documents into a folder that it makes, and nothing else', async () => {
    out = join(folder, 'season', 'out');
    const shown = await deliver(out, async (tray) => {
      writeFileSync(join(tray.workFolder, 'page.html'), 'meanwhile');
      const place = tray.place('learners/07-ada.pdf');
      writeFileSync(place, 'Ada');
      write(tray, { 'handout.pdf': 'all' });
      expect(files(out)).not.toHaveProperty('handout.pdf');
      return tray.destination(place);
    });
    expect(shown).toBe(join(out, 'learners/07-ada.pdf'));
    expect(files(out)).toEqual({
      'handout.pdf': 'all',
      learners: 'folder',
      'learners/07-ada.pdf': 'Ada',
    });
  });

  it('shows where documents go as the user has named the folder', async () => {
    out = relative('.', out);
    const shown = await deliver(out, async (tray) => {
      const place = tray.place('a.pdf');
      writeFileSync(place, 'a');
      return tray.destination(place);
    });
    expect(shown).toBe(join(out, 'a.pdf'));
    expect(files()).toEqual({ out: 'folder', 'out/a.pdf': 'a' });
  });

  it('replaces what an earlier run made, and keeps what it does not make anew', async () => {
    await deliver(out, making({ 'a.pdf': 'old a', 'b.pdf': 'old b' }));
    writeFileSync(join(out, 'notes.txt'), 'mine');
    await deliver(out, making({ 'a.pdf': 'new a', 'c/d.pdf': 'new d' }));
    expect(files(out)).toEqual({
      'a.pdf': 'new a',
      'b.pdf': 'old b',
      c: 'folder',
      'c/d.pdf': 'new d',
      'notes.txt': 'mine',
    });
  });

  it('leaves everything as it was when the work fails', async () => {
    await deliver(out, making({ 'a.pdf': 'old a' }));
    const before = files();
    const failing = deliver(out, async (tray) => {
      write(tray, { 'a.pdf': 'new a', 'c/d.pdf': 'new d' });
      throw new RangeError('bad page');
    });
    await expect(failing).rejects.toThrow(RangeError);
    expect(files()).toEqual(before);
  });

  it('takes away the folders that it made when the work fails, but no others', async () => {
    out = join(folder, 'a', 'b', 'c');
    mkdirSync(join(folder, 'a'));
    await expect(deliver(out, () => Promise.reject(new Error('no')))).rejects.toThrow('no');
    expect(files()).toEqual({ a: 'folder' });
  });

  it('leaves everything as it was when one document of many cannot be put in its place', async () => {
    mkdirSync(join(out, 'b.pdf', 'inside'), { recursive: true });
    writeFileSync(join(out, 'a.pdf'), 'old a');
    const before = files();
    const names = ['new/0.pdf', 'a.pdf', 'b.pdf', 'c.pdf'];
    const error = await failure(deliver(out, making(Object.fromEntries(names.map((name) => [name, 'new'])))));
    expect(error.message).toBe(`cannot write ${join(out, 'b.pdf')}: a folder has that name`);
    expect(files()).toEqual(before);
  });

  it('never replaces one document of a run by another', () =>
    expect(deliver(out, making({ 'a.pdf': '1', 'A.pdf': '2' }))).rejects.toThrow('two documents are called'));

  it('fails, and delivers nothing, when a document was not made', async () => {
    const error = await failure(deliver(out, async (tray) => void [tray.place('a.pdf')]));
    expect(error.message).toContain('a.pdf');
    expect(files()).toEqual({});
    mkdirSync(join(out, 'a.pdf', 'inside'), { recursive: true });
    await failure(deliver(out, async (tray) => void [tray.place('a.pdf')]));
    expect(readdirSync(join(out, 'a.pdf'))).toEqual(['inside']);
  });

  it('speaks of the folder that the user knows, not of the private one', async () => {
    const error = await failure(
      deliver(out, async (tray) => {
        const place = tray.place('a.pdf');
        mkdirSync(place);
        await writeWhole(place, Buffer.from('text'));
      }),
    );
    expect(error.message).toBe(`cannot write ${join(out, 'a.pdf')}: a folder has that name`);
  });

  it('removes what a run left that was ended by force, once it is a day old', async () => {
    for (const name of ['.benchleaf-making-old', '.benchleaf-making-new', '.other'])
      mkdirSync(join(out, name), { recursive: true });
    const yesterday = Date.now() / 1000 - 25 * 3600;
    for (const name of ['.benchleaf-making-old', '.other']) utimesSync(join(out, name), yesterday, yesterday);
    await deliver(out, making({ 'a.pdf': 'a' }));
    expect(readdirSync(out).sort()).toEqual(['.benchleaf-making-new', '.other', 'a.pdf']);
  });
});

it('a run whose folder another has taken over puts nothing there, and says so', async () => {
  const error = await failure(
    deliver(out, async (tray) => {
      write(tray, { 'a.pdf': 'a' });
      renameSync(dirname(tray.workFolder), join(folder, 'taken'));
    }),
  );
  expect(error.message).toBe(`another run took this one for dead, and has the folder ${out} now`);
  expect(files(folder)).not.toHaveProperty('out/a.pdf');
});

describe('deliver(out, make) refuses a folder before any work is done', () => {
  it.each(['out', 'out/pack'])('%s, where there is a file', async (name) => {
    writeFileSync(out, 'a file');
    out = join(folder, name);
    expect(await failure(deliver(out, untouched))).toEqual(refused('a file stands where a folder should be'));
    expect(files()).toEqual({ out: 'a file' });
  });

  const root = process.getuid?.() === 0;
  /** Root may write anywhere, so it becomes nobody for a while. */
  const asOrdinaryUser = async (work: () => Promise<void>) => {
    if (root) process.seteuid?.(65534);
    try {
      await work();
    } finally {
      if (root) process.seteuid?.(0);
    }
  };

  it.runIf(process.geteuid)('one that may only be read', () => {
    mkdirSync(out);
    chmodSync(out, 0o555);
    chmodSync(folder, 0o755);
    return asOrdinaryUser(async () => {
      const why = 'writing there is not permitted';
      expect(await failure(deliver(out, untouched))).toEqual(refused(why));
      out = join(out, 'deeper');
      expect(await failure(deliver(out, untouched))).toEqual(refused(why));
    });
  });

  it.runIf(process.platform === 'linux')('one where the system has no place for folders', async () => {
    out = '/proc/season/out';
    expect(await failure(deliver(out, untouched))).toEqual(refused('its folder does not exist'));
  });

  it('one whose name is too long, and leaves none of those above it', async () => {
    out = join(folder, 'season', 'a'.repeat(300));
    const error = await failure(deliver(out, untouched));
    expect(error.message).toContain(`cannot write into the folder ${out}: `);
    expect(files()).toEqual({});
  });

  /** Mounts a small disk at `out`; where that is not permitted there is nothing to test with. */
  const smallDisk = (size: string): boolean => {
    mkdirSync(out);
    try {
      execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${size}`, 'tmpfs', out], { stdio: 'ignore' });
      return true;
    } catch {
      return false;
    }
  };
  const putAway = () => execFileSync('umount', [out]);

  it('one on a full disk', async ({ skip }) => {
    if (!smallDisk('1m')) skip('a small disk cannot be mounted here');
    try {
      expect(await failure(deliver(out, untouched))).toEqual(refused('the disk is full'));
      expect(files(out)).toEqual({});
    } finally {
      putAway();
    }
  });

  it('and one whose disk fills up during the work is left as it was', async ({ skip }) => {
    if (!smallDisk('6m')) skip('a small disk cannot be mounted here');
    try {
      await deliver(out, making({ 'a.pdf': 'old a' }));
      const large = 'x'.repeat(4 << 20);
      const fonts = deliver(out, making({ 'a.pdf': large, 'b.pdf': large }));
      expect(await failure(fonts)).toEqual(refused('the disk is full'));
      const printed = deliver(out, async (tray) => {
        for (const name of ['a.pdf', 'b.pdf']) await writeWhole(tray.place(name), Buffer.from(large));
      });
      expect((await failure(printed)).message).toBe(`cannot write ${join(out, 'b.pdf')}: the disk is full`);
      expect(files(out)).toEqual({ 'a.pdf': 'old a' });
    } finally {
      putAway();
    }
  });
});
