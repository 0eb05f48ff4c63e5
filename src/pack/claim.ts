import { performance } from 'node:perf_hooks';
import { setTimeout as sleep } from 'node:timers/promises';
import { MachineError } from '../diagnostics/errors.js';
import { beat, bury, buryAll, markWorking, otherRuns, type Run, type Task } from './run-folder.js';
import { lifeOf, thisWorker } from './worker.js';

/** How long to wait for others, in milliseconds. */
export interface Patience {
  /** Between two signs of life of a run. */
  readonly beat: number;
  /** A run that cannot be seen and gives no sign for so long is dead. */
  readonly silence: number;
  /** For another that asks at the same moment. */
  readonly asking: number;
}
const PATIENCE: Patience = { beat: 2000, silence: 60_000, asking: 5000 };
const POLL = 25;

/**
 * Claims a folder for a run. Two that would mix never have it at once: each makes its private folder before it looks
 * for others, so that of two at least one sees the other; of two that ask at the same moment the one whose folder has
 * the later name waits, and the other gives way. What dead runs left is cleared away first.
 *
 * A run on this machine is dead when its process is. Another machine's cannot be seen: it is dead when it gives no
 * sign for long. No clock is asked, so none can be wrong.
 *
 * @param own the private folder of this run, in `folder`
 * @param shown the folder, as the user names it
 * @returns gives the claim up
 * @throws {MachineError} when another run has the folder, saying who
 */
export async function claim(
  { folder, own, shown }: { readonly folder: string; readonly own: string; readonly shown: string },
  task: Task,
  patience = PATIENCE,
): Promise<() => void> {
  const beating = setInterval(() => beat(own), patience.beat);
  beating.unref();
  const release = (): void => clearInterval(beating);
  try {
    const silent = new Silence();
    const begun = performance.now();
    for (;;) {
      buryAll(folder, own);
      const rivals = otherRuns(folder, own).filter((run) => rival(run.task, task));
      if (rivals.length === 0) break;
      for (const run of rivals) {
        const quiet = silent.of(run);
        const unseen = lifeOf(run.worker) === 'unknown';
        if (unseen && quiet >= patience.silence) bury(folder, own, run.name);
        else if (unseen && !silent.heard(run)) continue;
        else if (run.working || givesWay(own, run) || performance.now() - begun > patience.asking)
          throw taken(run, shown);
      }
      await sleep(POLL);
    }
    markWorking(own);
    return release;
  } catch (error) {
    release();
    throw error;
  }
}

/** Other shards of the same set get along. */
const rival = (one: Task, other: Task): boolean =>
  one.set !== other.set || one.of !== other.of || one.shard === other.shard;

const givesWay = (own: string, { name }: Run): boolean => own.slice(-name.length) < name;

/** How long each run has given no sign. */
class Silence {
  readonly #first = new Map<string, number>();
  readonly #last = new Map<string, { readonly beats: number; readonly at: number }>();

  /** @returns milliseconds since its last sign, or since it was first looked at */
  of({ name, beats }: Run): number {
    const now = performance.now();
    if (!this.#first.has(name)) this.#first.set(name, beats);
    if (this.#last.get(name)?.beats !== beats) this.#last.set(name, { beats, at: now });
    return now - (this.#last.get(name)?.at ?? now);
  }

  /** Whether it has given a sign since it was first looked at. */
  heard({ name, beats }: Run): boolean {
    return this.#first.get(name) !== beats;
  }
}

const WHEN = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeStyle: 'short' });

function taken({ worker, name }: Run, shown: string): MachineError {
  const { pid, host, started } = worker;
  const since = Number.isNaN(Date.parse(started)) ? '' : `, begun on ${WHEN.format(new Date(started))}`;
  const where = host === thisWorker().host ? '' : ` on the machine ${host}`;
  return new MachineError(`another run is making documents in ${shown}: process ${pid}${where}${since}`, [
    'Wait until it is done, or name another folder with --out.',
    `Should it have ended long ago, delete ${name} there.`,
  ]);
}
