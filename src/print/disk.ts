import { link, rename, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { MachineError } from '../diagnostics/errors.js';

const REASONS: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EDQUOT: 'your share of the disk is used up',
  EACCES: 'writing there is not permitted',
  EPERM: 'writing there is not permitted',
  EROFS: 'that disk can only be read',
  ENOENT: 'its folder does not exist',
  ENOTDIR: 'its folder does not exist',
  EISDIR: 'a folder has that name',
  ENAMETOOLONG: 'the name is too long for that disk',
  EEXIST: 'a file of that name is in the way',
  EBUSY: 'another program has it open',
};

/** Why the disk refused, in words a reader knows. */
export function because(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  return REASONS[code ?? ''] ?? message;
}

/**
 * Writes a file whole or not at all: beside its place first, then renamed.
 *
 * @param path absolute path of the file
 * @throws {MachineError} naming the path and the reason; nothing is left behind then
 */
export async function writeWhole(path: string, bytes: Uint8Array): Promise<void> {
  const part = join(dirname(path), `.${basename(path)}.part`);
  try {
    await writeFile(part, bytes);
    await rename(part, path);
  } catch (error) {
    await rm(part, { force: true }).catch(() => undefined);
    throw new MachineError(`cannot write ${path}: ${because(error)}`);
  }
}

/**
 * The same with a file that is there already and holds these bytes: where the disk allows, it only gets a second name.
 *
 * @throws what `writeWhole` throws
 */
export async function placeWhole(path: string, bytes: Uint8Array, file: string | undefined): Promise<void> {
  const placed =
    file === undefined
      ? false
      : await link(file, path).then(
          () => true,
          () => false,
        );
  if (!placed) await writeWhole(path, bytes);
}
