import {
  closeSync,
  constants,
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { readText } from '../reading/text.js';
import { takeBack } from './moves.js';
import { lifeOf, thisWorker, workerSchema } from './worker.js';

/** What a run makes: which set, and which part of it. */
export const taskSchema = z.strictObject({
  /** Names what the set is made from; runs of one set get along. */
  set: z.string().max(100),
  shard: z.number().int().positive(),
  of: z.number().int().positive(),
});
export type Task = z.output<typeof taskSchema>;

const runSchema = z.strictObject({ worker: workerSchema, task: taskSchema });
type Told = z.output<typeof runSchema>;

/** A run as another sees it. */
export interface Run extends Told {
  readonly name: string;
  /** It has the folder; one that has not is still asking for it. */
  readonly working: boolean;
  /** Grows for as long as the run goes on: for those who cannot see its process. */
  readonly beats: number;
}

/** Each run has a private folder in the folder that it delivers to, which also says that it is there. */
const PRIVATE = '.benchleaf-making-';
const BEING_MADE = '.benchleaf-begun-';
const RUN = 'run.json';
const WORKING = 'working';
/** Where a run puts the private folders of dead ones before it removes them: only one can have each. */
const TAKEN = 'taken';
const DAY = 86_400_000;

/** Makes the private folder of a run; it gets its name when it says whose it is. */
export function makeRunFolder(folder: string, task: Task): string {
  const begun = mkdtempSync(join(folder, BEING_MADE));
  try {
    const told: Told = { worker: thisWorker(), task };
    writeFileSync(join(begun, RUN), `${JSON.stringify(told)}\n`);
    const name = begun.replace(BEING_MADE, PRIVATE);
    renameSync(begun, name);
    return name;
  } catch (error) {
    rmSync(begun, { recursive: true, force: true });
    throw error;
  }
}

/** Says that the run goes on. */
export function beat(own: string): void {
  try {
    // Not made anew where it has been taken away.
    const file = openSync(join(own, RUN), constants.O_WRONLY | constants.O_APPEND);
    try {
      writeSync(file, '.');
    } finally {
      closeSync(file);
    }
  } catch {
    // Another has taken this run for dead, and the folder with it: the run will fail of that by itself.
  }
}

export const markWorking = (own: string): void => writeFileSync(join(own, WORKING), '');

/** The other runs in a folder. */
export function otherRuns(folder: string, own: string): Run[] {
  return readdirSync(folder)
    .filter((name) => name.startsWith(PRIVATE) && join(folder, name) !== own)
    .flatMap((name) => runIn(folder, name) ?? []);
}

function runIn(folder: string, name: string): Run | undefined {
  try {
    if (!isFolder(join(folder, name))) return undefined;
    const [told = '', beats = ''] = readText(join(folder, name, RUN), 'run').split('\n');
    const working = existsSync(join(folder, name, WORKING));
    return { ...runSchema.parse(JSON.parse(told)), name, working, beats: beats.length };
  } catch {
    return undefined; // it is ending just now, or it is none
  }
}

/** Takes back what a dead run has left half-moved, and removes its folder. */
export function bury(folder: string, own: string, name: string): void {
  const taken = join(own, TAKEN);
  mkdirSync(taken, { recursive: true });
  try {
    renameSync(join(folder, name), join(taken, name));
  } catch {
    return; // another has it
  }
  settle(folder, join(taken, name));
  remove(join(taken, name));
}

/** One that died while it buried another has that one's to settle too. */
function settle(folder: string, dead: string): void {
  const taken = join(dead, TAKEN);
  if (isFolder(taken))
    for (const name of readdirSync(taken)) if (isFolder(join(taken, name))) settle(folder, join(taken, name));
  takeBack(folder, dead);
}

/** Removes the folders of runs that are known to be dead, and of any that does not say whose it is, once a day old. */
export function buryAll(folder: string, own: string): void {
  for (const name of readdirSync(folder)) {
    if (join(folder, name) === own || !(name.startsWith(PRIVATE) || name.startsWith(BEING_MADE))) continue;
    if (!isOurs(join(folder, name))) continue;
    const run = runIn(folder, name);
    if (run ? lifeOf(run.worker) === 'dead' : isOld(join(folder, name))) bury(folder, own, name);
  }
}

/** No run is behind a link, and what another user has made cannot be removed. */
function isOurs(path: string): boolean {
  const user = process.getuid?.() ?? 0;
  return isFolder(path) && (user === 0 || statSync(path, { throwIfNoEntry: false })?.uid === user);
}

const isFolder = (path: string): boolean =>
  lstatSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;

function isOld(path: string): boolean {
  const changed = statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? Date.now();
  return Math.abs(Date.now() - changed) > DAY;
}

/** Removes a private folder; the last of a browser's processes may still be writing in it. */
export function remove(own: string): void {
  rmSync(own, { recursive: true, force: true, maxRetries: 3 });
}
