import { lstatSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { MachineError } from '../diagnostics/errors.js';
import { because } from '../print/disk.js';
import { ANOTHER_FOLDER, openOutFolder } from './out-folder.js';
import { tidily } from './tidily.js';

/** Where the documents of one run are put together. */
export interface Tray {
  /** A private folder for what is needed meanwhile, such as pages and fonts. */
  readonly workFolder: string;
  /**
   * Where to write the document of this name, such as `learners/07-ada-brown.pdf`; the folder for it is there.
   *
   * @throws {Error} for a name that was given before
   */
  place(name: string): string;
  /** Where the user will find what was written to such a place. */
  destination(place: string): string;
}

/**
 * Makes documents, and puts them into the folder when all of them are made: those of one run belong together, a
 * key to its sheets. After a failure, or when the run is stopped, the folder is as it was before. What was there
 * and is not made anew stays.
 *
 * @param out the folder, as the user names it; it is made, and found writable, before anything else is done
 * @throws {MachineError} when the folder or a document in it cannot be written; what `make` throws
 */
export async function deliver<T>(out: string, make: (tray: Tray) => Promise<T>): Promise<T> {
  const folder = openOutFolder(out);
  const made = join(folder.privateFolder, 'made');
  const workFolder = join(folder.privateFolder, 'work');
  const places = new Map<string, string>();
  const tray: Tray = {
    workFolder,
    place: (name) => {
      const place = join(made, name);
      const key = place.toLowerCase();
      if (places.has(key)) throw new Error(`two documents are called ${name}`);
      places.set(key, place);
      mkdirSync(dirname(place), { recursive: true });
      return place;
    },
    destination: (place) => join(out, relative(made, place)),
  };
  return tidily(async () => {
    try {
      mkdirSync(workFolder);
      const result = await make(tray);
      const moves = [...places.values()].map((from) => ({
        from,
        to: join(folder.path, relative(made, from)),
      }));
      moveAll(moves, join(folder.privateFolder, 'replaced'));
      return result;
    } catch (error) {
      throw asUserKnowsIt(error, out, [made, folder.path]);
    }
  }, folder.tidyUp);
}

/**
 * Moves all files or none. Not to be interrupted: a signal has to wait until it is done.
 *
 * @param aside a folder on the same disk for what is replaced; it need not be there
 * @throws {MachineError} naming the file that cannot be put in its place
 */
function moveAll(moves: readonly { from: string; to: string }[], aside: string): void {
  const undo: (() => void)[] = [];
  mkdirSync(aside);
  for (const [index, { from, to }] of moves.entries())
    try {
      const folder = mkdirSync(dirname(to), { recursive: true });
      if (folder) undo.push(() => rmSync(folder, { recursive: true }));
      const old = join(aside, String(index));
      const replaces = lstatSync(to, { throwIfNoEntry: false })?.isDirectory() === false;
      if (replaces) {
        renameSync(to, old);
        undo.push(() => renameSync(old, to));
      }
      renameSync(from, to);
      if (!replaces) undo.push(() => rmSync(to));
    } catch (error) {
      for (const step of undo.reverse()) step();
      throw new MachineError(`cannot write ${to}: ${because(error)}`);
    }
}

/** The user knows the folder that was named, and nothing of a private one. */
function asUserKnowsIt(error: unknown, out: string, folders: readonly string[]): unknown {
  if (!(error instanceof Error)) return error;
  const { code = '' } = error as NodeJS.ErrnoException;
  if (['ENOSPC', 'EDQUOT'].includes(code))
    return new MachineError(`cannot write into the folder ${out}: ${because(error)}`, [ANOTHER_FOLDER]);
  for (const folder of folders) error.message = error.message.replaceAll(folder, out);
  return error;
}
