import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import type { Printer } from '../print/printer.js';
import { deliver } from './delivery.js';
import { unprinted } from './kinds.js';
import { openPrinter, printing } from './open-printer.js';
import { overtakenBy, packingListName, packingListText, shardIn } from './packing-list.js';
import type { Order } from './plan.js';
import { PrintCache } from './print-cache.js';
import { type MadeDocument, produce } from './produce.js';
import type { ProgressOptions } from './progress.js';
import { fromUnchanged, setOf } from './set.js';
import { inShard, type Shard } from './shard.js';
import type { Standing } from './standing.js';
import { tidily } from './tidily.js';

/** What a run made, as `make --json` prints it. */
export interface Made {
  readonly course: string;
  readonly variant: string;
  /** None where all of a set was made. */
  readonly shard?: Shard;
  readonly documents: readonly MadeDocument[];
}

/** How a run goes, whatever it makes. */
export interface RunOptions extends Omit<ProgressOptions, 'total'> {
  /** Folder in which printed documents are kept from run to run; none are where it is not told. */
  readonly cache?: string;
  /** The part of the set that is made; all of it unless told. */
  readonly shard?: Shard;
  /**
   * What an earlier run has left: its printer is used, and only what has changed since is made. What is being written
   * has no packing list.
   */
  readonly standing?: Standing;
}

/**
 * Makes the documents of an order, and a packing list of them: all of them, or none.
 *
 * @param out the folder they go to; made where it is not there
 * @throws {ContentError} what is wrong in a lesson, kit or list; {CommandError} a wrong file or code;
 *   {MachineError} no browser, or a folder that cannot be written; {DisagreementError} two routes that differ
 */
export async function make(order: Order, out: string, run: RunOptions): Promise<Made> {
  const { shard = { number: 1, of: 1 }, standing } = run;
  const date = sourceDate();
  const set = setOf(order, date.date);
  let store: PrintCache | undefined;
  const made = await deliver(
    out,
    async (tray) => {
      if (run.cache !== undefined) store = new PrintCache(resolve(run.cache), tray.workFolder);
      // The browser starts while the pages are worked out.
      const opening = [...order.only].every((kind) => unprinted.has(kind))
        ? undefined
        : (standing?.printer(date) ??
          openPrinter(tray.workFolder, await printing(), { ...date, ...(store ? { store } : {}) }));
      opening?.catch(() => undefined); // told when it is waited for: the content comes first
      return tidily(
        async () => {
          const { planOf } = await import('./plan.js'); // slow to load
          await begun(opening);
          const plan = () => planOf({ ...date, ...order }, standing?.lessons);
          const { variant, documents: all } = standing ? plan() : fromUnchanged(order, set, plan);
          const documents = standing?.latest.changed(all, out) ?? inShard(all, shard);
          const printer = await opening;
          const finished = await produce(documents, tray, printer, run);
          const list = packingListText({
            format: 'benchleaf-packing-list-1',
            ...set,
            ...(printer && documents.some((one) => !('data' in one)) ? { browser: printer.browser } : {}),
            shard,
            documents: finished.map(({ name, kind, bytes, sha256, pages }) => ({
              name,
              kind,
              size: bytes,
              sha256,
              ...(pages === 0 ? {} : { pages }),
            })),
          });
          if (!standing) writeFileSync(tray.place(packingListName(shard)), list);
          return {
            course: order.course.name,
            variant,
            ...(shard.of === 1 ? {} : { shard }),
            documents: finished.map(({ name: _, sha256: __, ...one }) => one),
          };
        },
        // One that is still starting would write into the folder while it is taken away.
        async () => {
          if (standing) return;
          const printer = await opening?.catch(() => undefined);
          await printer?.close();
        },
      );
    },
    { set: set.set, shard: shard.number, of: shard.of, overtakes: standing ? isList : overtakenBy(shard) },
  );
  await store?.clear();
  standing?.latest.delivered();
  return made;
}

const isList = (name: string): boolean => shardIn(name) !== undefined;

/** Long enough for the browser's own process to be started, in milliseconds. */
const BEGINNING = 100;

/**
 * The browser is looked for and started in many small steps, which nobody takes while pages are worked out: these have
 * a start, and the rest goes on beside in the browser's process.
 */
async function begun(opening: Promise<Printer> | undefined): Promise<void> {
  if (opening) await Promise.race([opening.catch(() => undefined), sleep(BEGINNING)]);
}

/** The date to write into the files, where the one who builds them has set it: seconds since 1970. */
function sourceDate(): { readonly date?: Date } {
  const seconds = Number(process.env.SOURCE_DATE_EPOCH ?? '');
  return process.env.SOURCE_DATE_EPOCH && Number.isFinite(seconds) ? { date: new Date(seconds * 1000) } : {};
}
