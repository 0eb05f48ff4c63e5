import { existsSync, lstatSync, mkdirSync, readFileSync, renameSync, rmdirSync, unlinkSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { z } from 'zod';
import { MachineError } from '../diagnostics/errors.js';
import { because } from '../print/disk.js';
import { isSafeName } from './safe-name.js';
import { writeSafely } from './written-safely.js';

/** Where the parts of a run lie inside its private folder. */
const MADE = 'made';
const REPLACED = 'replaced';
const JOURNAL = 'moves.json';

const safe = z.string().refine(isSafeName);
const move = z.strictObject({
  /** In the folder, and in what was made. */
  name: safe,
  /** Nothing takes its place. */
  gone: z.boolean(),
  /** Something of that name was there. */
  replaces: z.boolean(),
});
type Move = z.output<typeof move>;
/** With the folders that were not there, the outer first. */
const journal = z.strictObject({ folders: z.array(safe), moves: z.array(move) });

/** What is to be done to a folder. */
export interface Changes {
  /** Taken away first. */
  readonly gone: readonly string[];
  /** Moved into place in this order. */
  readonly made: readonly string[];
}

export const madeFolder = (privateFolder: string): string => join(privateFolder, MADE);

/**
 * Moves all that was made into the folder, or nothing. A signal has to wait until it is done; what is cut short by
 * force or by a power cut is taken back by `takeBack`, for which a journal is kept.
 *
 * @throws {MachineError} naming the file that cannot be put in its place
 */
export function moveAll(folder: string, privateFolder: string, { gone, made }: Changes): void {
  const moves = [
    ...gone.map((name): Move => ({ name, gone: true, replaces: true })),
    ...made.map((name): Move => {
      const replaces = isNoFolder(join(folder, name)) && !gone.includes(name);
      return { name, gone: false, replaces };
    }),
  ];
  const folders = [...new Set(made.flatMap(above))].filter((name) => !existsSync(join(folder, name)));
  mkdirSync(join(privateFolder, REPLACED));
  writeSafely(join(privateFolder, JOURNAL), JSON.stringify({ folders, moves }));
  for (const [index, one] of moves.entries()) {
    const to = join(folder, one.name);
    try {
      mkdirSync(dirname(to), { recursive: true });
      if (one.replaces) renameSync(to, join(privateFolder, REPLACED, String(index)));
      if (!one.gone) renameSync(join(privateFolder, MADE, one.name), to);
    } catch (error) {
      takeBack(folder, privateFolder);
      throw new MachineError(`cannot write ${to}: ${because(error)}`);
    }
  }
  unlinkSync(join(privateFolder, JOURNAL)); // from now on nothing is taken back
}

/** Makes the folder what it was before a run that moved some things and not all. May be cut short and done again. */
export function takeBack(folder: string, privateFolder: string): void {
  const { folders, moves } = journalIn(privateFolder);
  for (const [index, { name, gone, replaces }] of [...moves.entries()].reverse()) {
    const to = join(folder, name);
    const old = join(privateFolder, REPLACED, String(index));
    const made = join(privateFolder, MADE, name);
    if (replaces && existsSync(old)) renameSync(old, to);
    // Back to where it was made, so that it is not taken for one that is still to be taken back.
    if (!replaces && !gone && !existsSync(made) && isNoFolder(to)) renameSync(to, made);
  }
  for (const name of folders.toReversed()) quietly(() => rmdirSync(join(folder, name)));
  quietly(() => unlinkSync(join(privateFolder, JOURNAL)));
}

/** Something is there, and it is no folder: a folder is never moved. */
const isNoFolder = (path: string): boolean =>
  lstatSync(path, { throwIfNoEntry: false })?.isDirectory() === false;

/** The folders that a file lies in, the outer first: `a`, `a/b` for `a/b/c.pdf`. */
function above(name: string): string[] {
  const parts = name.split('/').slice(0, -1);
  return parts.map((_, at) => parts.slice(0, at + 1).join('/'));
}

/** Nothing was moved before there was a whole journal. */
function journalIn(privateFolder: string): z.output<typeof journal> {
  try {
    return journal.parse(JSON.parse(readFileSync(join(privateFolder, JOURNAL), 'utf8')));
  } catch {
    return { folders: [], moves: [] };
  }
}

function quietly(work: () => void): void {
  try {
    work();
  } catch {
    // It is not there, or something is in it: it stays as it is.
  }
}
