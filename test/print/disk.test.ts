import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { MachineError } from '../../src/diagnostics/errors.js';
import { because, writeWhole } from '../../src/print/disk.js';

let folder: string;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'benchleaf-disk-'));
});

afterEach(() => rm(folder, { recursive: true }));

describe('writeWhole(path, bytes)', () => {
  it('replaces what was there and leaves nothing beside it', async () => {
    const path = join(folder, 'a.pdf');
    await writeFile(path, 'a longer file than the new one');
    await writeWhole(path, Buffer.from('new'));
    expect(await readFile(path, 'utf8')).toBe('new');
    expect(await readdir(folder)).toEqual(['a.pdf']);
  });

  it.each([
    ['into no folder', 'none/a.pdf', 'its folder does not exist'],
    ['into a file', 'file/a.pdf', 'its folder does not exist'],
    ['over a folder', 'folder', 'a folder has that name'],
  ])('%s throws MachineError with path and reason, and leaves nothing', async (_, name, reason) => {
    await writeFile(join(folder, 'file'), '');
    await mkdir(join(folder, 'folder'));
    const path = join(folder, name);
    const failure = writeWhole(path, Buffer.from('new'));
    await expect(failure).rejects.toThrow(MachineError);
    await expect(failure).rejects.toThrow(`cannot write ${path}: ${reason}`);
    expect((await readdir(folder)).sort()).toEqual(['file', 'folder']);
  });
});

describe('because(error)', () => {
  it('says it in words where it knows them, else as the system does', () => {
    expect(because(Object.assign(new Error('write'), { code: 'ENOSPC' }))).toBe('the disk is full');
    expect(because(new Error('something else'))).toBe('something else');
  });

  it.runIf(process.platform === 'linux')('knows a full disk when it meets one', async () => {
    const error = await writeFile('/dev/full', 'text').catch((failure: unknown) => failure);
    expect(because(error)).toBe('the disk is full');
  });
});
