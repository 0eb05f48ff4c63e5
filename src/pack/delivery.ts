import { existsSync, mkdirSync, readdirSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { MachineError } from '../diagnostics/errors.js';
import { because } from '../print/disk.js';
import { claim } from './claim.js';
import { madeFolder, moveAll } from './moves.js';
import { ANOTHER_FOLDER, openOutFolder } from './out-folder.js';
import type { Task } from './run-folder.js';
import { tidily } from './tidily.js';
import { settleOnDisk } from './written-safely.js';

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

/** What the run is, to those that are told apart by it. */
export interface Errand extends Task {
  /** Which files of the folder are of no use once this run has delivered: they are taken away before it does. */
  overtakes(name: string): boolean;
}

const WHOLE: Errand = { set: '', shard: 1, of: 1, overtakes: () => false };

/**
 * Makes documents, and puts them into the folder when all of them are made: those of one run belong together, a
 * key to its sheets. After a failure, or when the run is stopped, the folder is as it was before; after one that was
 * ended by force, the next run makes it so. What was there and is not made anew stays. Files are put there in the order
 * in which places were asked for. One run has the folder at a time, or several shards of one set.
 *
 * @param out the folder, as the user names it; it is made, and found writable, before anything else is done
 * @throws {MachineError} when the folder or a document in it cannot be written, or another run has it; what `make`
 *   throws
 */
export async function deliver<T>(
  out: string,
  make: (tray: Tray) => Promise<T>,
  { overtakes, ...task }: Errand = WHOLE,
): Promise<T> {
  const { path, privateFolder, tidyUp } = openOutFolder(out, task);
  const made = madeFolder(privateFolder);
  const workFolder = join(privateFolder, 'work');
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
  let release = (): void => undefined;
  return tidily(
    async () => {
      try {
        release = await claim({ folder: path, own: privateFolder, shown: out }, task);
        mkdirSync(workFolder);
        const result = await make(tray);
        const all = [...places.values()];
        await settleOnDisk(all);
        moveAll(path, privateFolder, {
          gone: readdirSync(path).filter(overtakes),
          made: all.map((place) => relative(made, place).split(sep).join('/')),
        });
        return result;
      } catch (error) {
        if (!existsSync(privateFolder))
          throw new MachineError(`another run took this one for dead, and has the folder ${out} now`, [
            'Nothing was put there. Make the documents again when it is done.',
          ]);
        throw asUserKnowsIt(error, out, [made, path]);
      }
    },
    () => {
      release();
      tidyUp();
    },
  );
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
