import { lstatSync, mkdirSync, readFileSync, renameSync, rmdirSync, type Stats, unlinkSync } from 'node:fs';
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
  for (const name of made)
    if (leadsElsewhere(folder, name))
      throw new MachineError(`cannot write ${join(folder, name)}: a link stands where a folder should be`, [
        'Take the link away, or name another folder with --out.',
      ]);
  const moves = [
    ...gone.map((name): Move => ({ name, gone: true, replaces: true })),
    ...made.map((name): Move => {
      const replaces = isNoFolder(join(folder, name)) && !gone.includes(name);
      return { name, gone: false, replaces };
    }),
  ];
  const folders = [...new Set(made.flatMap(above))].filter((name) => !isThere(join(folder, name)));
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
  const { folders, moves } = journalIn(folder, privateFolder);
  for (const [index, { name, gone, replaces }] of [...moves.entries()].reverse()) {
    const to = join(folder, name);
    const old = join(privateFolder, REPLACED, String(index));
    const made = join(privateFolder, MADE, name);
    if (replaces && isThere(old)) renameSync(old, to);
    // Back to where it was made, so that it is not taken for one that is still to be taken back.
    if (!replaces && !gone && !isThere(made) && isNoFolder(to)) renameSync(to, made);
  }
  for (const name of folders.toReversed()) quietly(() => rmdirSync(join(folder, name)));
  quietly(() => unlinkSync(join(privateFolder, JOURNAL)));
}

/** What stands there, links as they are; nothing either where a file stands on the way. */
function about(path: string): Stats | undefined {
  try {
    return lstatSync(path);
  } catch {
    return undefined;
  }
}

const isThere = (path: string): boolean => about(path) !== undefined;

/** Something is there, and it is no folder: a folder is never moved. */
const isNoFolder = (path: string): boolean => about(path)?.isDirectory() === false;

/** The folders that a file lies in, the outer first: `a`, `a/b` for `a/b/c.pdf`. */
function above(name: string): string[] {
  const parts = name.split('/').slice(0, -1);
  return parts.map((_, at) => parts.slice(0, at + 1).join('/'));
}

/** Whether a link stands on the way: then what is done to that name is done somewhere else. */
const leadsElsewhere = (folder: string, name: string): boolean =>
  above(name).some((part) => about(join(folder, part))?.isSymbolicLink());

/**
 * Nothing was moved before there was a whole journal. One that leads elsewhere was not written by a run, but came with
 * a folder that somebody sent: what it says would move files of other folders.
 */
function journalIn(folder: string, privateFolder: string): z.output<typeof journal> {
  const nothing = { folders: [], moves: [] };
  try {
    const file = join(privateFolder, JOURNAL);
    if (!about(file)?.isFile()) return nothing; // a pipe never ends
    const told = journal.parse(JSON.parse(readFileSync(file, 'utf8')));
    const names = [...told.moves.map(({ name }) => name), ...told.folders];
    const inside = ({ name }: Move, index: number): boolean =>
      !leadsElsewhere(privateFolder, `${REPLACED}/${index}`) &&
      !leadsElsewhere(privateFolder, `${MADE}/${name}`);
    return told.moves.every(inside) && !names.some((name) => leadsElsewhere(folder, name)) ? told : nothing;
  } catch {
    return nothing;
  }
}

function quietly(work: () => void): void {
  try {
    work();
  } catch {
    // It is not there, or something is in it: it stays as it is.
  }
}
