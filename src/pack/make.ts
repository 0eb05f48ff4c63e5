import { writeFileSync } from 'node:fs';
import type { Printer, PrintJob } from '../print/printer.js';
import { copyAssets } from '../sheets/assets.js';
import { deliver, type Tray } from './delivery.js';
import { type Kind, unprinted } from './kinds.js';
import { type Document, type Order, planOf } from './plan.js';
import { type ProgressOptions, showProgress } from './progress.js';
import { tidily } from './tidily.js';

/** One document made. */
export interface MadeDocument {
  readonly kind: Kind;
  readonly file: string;
  /** None for a file of data. */
  readonly pages: number;
  readonly bytes: number;
  readonly variant?: string;
  readonly learner?: string;
  /** What is told of it, a sentence each. */
  readonly reports?: readonly string[];
}

/** What a run made, as `make --json` prints it. */
export interface Made {
  readonly course: string;
  readonly variant: string;
  readonly documents: readonly MadeDocument[];
}

/**
 * Makes the documents of an order: all of them, or none.
 *
 * @param out the folder they go to; made where it is not there
 * @throws {ContentError} what is wrong in a lesson, kit or list; {CommandError} a wrong file or code;
 *   {MachineError} no browser, or a folder that cannot be written; {DisagreementError} two routes that differ
 */
export async function make(order: Order, out: string, shown: Omit<ProgressOptions, 'total'>): Promise<Made> {
  const date = sourceDate();
  return deliver(out, async (tray) => {
    // The browser starts while the pages are worked out.
    const opening = [...order.only].every((kind) => unprinted.has(kind))
      ? undefined
      : openPrinter(tray, date);
    opening?.catch(() => undefined); // told when it is waited for: the content comes first
    return tidily(
      async () => {
        const { variant, documents } = planOf({ ...date, ...order });
        if (opening) await copyAssets(tray.workFolder);
        const printer = await opening;
        const progress = showProgress({ ...shown, total: documents.length });
        const places = new Map(documents.map((one) => [tray.place(one.name), one]));
        const sizes = new Map<string, Size>();
        const done = ({ to, pages, bytes }: Size & { readonly to: string }) => {
          sizes.set(to, { pages, bytes });
          progress.done(tray.destination(to), pages);
        };
        await tidily(async () => {
          const printed = jobs(places, done);
          if (printer) await printer.printAll(printed, done);
          else for (const { to } of printed) throw new Error(`there is no printer for ${to}`);
        }, progress.end);
        return {
          course: order.course.name,
          variant,
          documents: [...places].map(([to, { kind, variant: code, learner, reports }]) => ({
            kind,
            file: tray.destination(to),
            ...(sizes.get(to) as Size),
            ...(code === undefined ? {} : { variant: code }),
            ...(learner === undefined ? {} : { learner }),
            ...(reports === undefined ? {} : { reports }),
          })),
        };
      },
      // One that is still starting would write into the folder while it is taken away.
      async () => {
        const printer = await opening?.catch(() => undefined);
        await printer?.close();
      },
    );
  });
}

interface Size {
  readonly pages: number;
  readonly bytes: number;
}

async function openPrinter({ workFolder }: Tray, date: { readonly date?: Date }): Promise<Printer> {
  const { Printer: Press } = await import('../print/printer.js'); // slow to load
  return Press.open({ workFolder, ...date });
}

/** What is to be printed, in its turn; a file of data is written when its turn comes. */
function* jobs(
  places: ReadonlyMap<string, Document>,
  done: (file: Size & { readonly to: string }) => void,
): Generator<PrintJob> {
  for (const [to, document] of places) {
    if ('html' in document) {
      yield { html: document.html(), to };
      continue;
    }
    if ('paged' in document) {
      yield { html: document.paged, to };
      continue;
    }
    const bytes = Buffer.from(document.data());
    writeFileSync(to, bytes);
    done({ to, pages: 0, bytes: bytes.length });
  }
}

/** The date to write into the files, where the one who builds them has set it: seconds since 1970. */
function sourceDate(): { readonly date?: Date } {
  const seconds = Number(process.env.SOURCE_DATE_EPOCH ?? '');
  return process.env.SOURCE_DATE_EPOCH && Number.isFinite(seconds) ? { date: new Date(seconds * 1000) } : {};
}
