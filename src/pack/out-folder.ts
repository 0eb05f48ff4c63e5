import { existsSync, lstatSync, mkdirSync, rmdirSync, statSync, unlinkSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { MachineError } from '../diagnostics/errors.js';
import { because } from '../print/disk.js';
import { makeRunFolder, remove, type Task } from './run-folder.js';

/** What to do when a folder cannot be used. */
export const ANOTHER_FOLDER = 'Name another with --out.';
/** Room that a pack takes at least, with its fonts, in bytes. */
const ROOM = 4 << 20;

/** The folder that the user has named, and a private one inside it: on the same disk, so that files only move. */
export interface OutFolder {
  /** Absolute path. */
  readonly path: string;
  readonly privateFolder: string;
  /** Removes the private folder, and whatever was made for it and is empty. */
  tidyUp(): void;
}

/**
 * Makes sure that the folder is there and can be written to.
 *
 * @param task what is going to be made there
 * @throws {MachineError} when it cannot; nothing is left behind then
 */
export function openOutFolder(out: string, task: Task): OutFolder {
  const path = resolve(out);
  let made: string | undefined;
  let privateFolder: string | undefined;
  const tidyUp = (): void => {
    if (privateFolder) remove(privateFolder);
    if (made) removeEmpty(path, made);
  };
  try {
    made = makeFolder(path);
    privateFolder = makeRunFolder(path, task);
    const probe = join(privateFolder, 'probe');
    writeFileSync(probe, Buffer.alloc(ROOM));
    unlinkSync(probe);
    return { path, privateFolder, tidyUp };
  } catch (error) {
    tidyUp();
    const { code = '' } = error as NodeJS.ErrnoException;
    const why = leadsNowhere(path)
      ? 'a link that leads nowhere stands there'
      : ['EEXIST', 'ENOTDIR'].includes(code)
        ? 'a file stands where a folder should be'
        : because(error);
    throw new MachineError(`cannot write into the folder ${out}: ${why}`, [ANOTHER_FOLDER]);
  }
}

/**
 * Makes a folder and those above it that are not there. Node's own way never ends where the system denies that
 * the folder above exists, as `/proc` does.
 *
 * @returns the first that was made
 */
function makeFolder(path: string): string | undefined {
  if (statSync(path, { throwIfNoEntry: false })?.isDirectory()) return undefined;
  const first = makeFolder(dirname(path));
  try {
    mkdirSync(path);
  } catch (error) {
    if (first) removeEmpty(dirname(path), first);
    throw error;
  }
  return first ?? path;
}

function leadsNowhere(path: string): boolean {
  try {
    if (!lstatSync(path).isSymbolicLink()) return false;
  } catch {
    return false;
  }
  return !existsSync(path); // nor does one that leads round and round
}

/** Removes a folder and those above it up to the one told, as far as they are empty. */
function removeEmpty(path: string, upTo: string): void {
  try {
    for (let folder = path; folder.startsWith(upTo); folder = dirname(folder)) rmdirSync(folder);
  } catch {
    // Something is in it, so it stays.
  }
}
