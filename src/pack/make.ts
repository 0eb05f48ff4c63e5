import type { PrintJob, PrintResult } from '../print/printer.js';
import { copyAssets } from '../sheets/assets.js';
import { deliver } from './delivery.js';
import type { Kind } from './kinds.js';
import { type Document, type Order, planOf } from './plan.js';
import { type ProgressOptions, showProgress } from './progress.js';
import { tidily } from './tidily.js';

/** One document made. */
export interface MadeDocument {
  readonly kind: Kind;
  readonly file: string;
  readonly pages: number;
  readonly bytes: number;
  readonly variant?: string;
  readonly learner?: string;
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
  return deliver(out, async (tray) => {
    const { Printer: Press } = await import('../print/printer.js'); // slow to load
    // The browser starts while the pages are worked out.
    const opening = Press.open({ workFolder: tray.workFolder, ...sourceDate() });
    opening.catch(() => undefined); // told when it is waited for: the content comes first
    return tidily(
      async () => {
        const { variant, documents } = planOf(order);
        await copyAssets(tray.workFolder);
        const printer = await opening;
        const progress = showProgress({ ...shown, total: documents.length });
        const places = new Map(documents.map((one) => [tray.place(one.name), one]));
        const done = ({ to, pages }: PrintResult) => progress.done(tray.destination(to), pages);
        const results = await tidily(() => printer.printAll(jobs(places), done), progress.end);
        return {
          course: order.course.name,
          variant,
          documents: results.map(({ to, pages, bytes }) => {
            const { kind, variant: code, learner } = places.get(to) as Document;
            return {
              kind,
              file: tray.destination(to),
              pages,
              bytes,
              ...(code === undefined ? {} : { variant: code }),
              ...(learner === undefined ? {} : { learner }),
            };
          }),
        };
      },
      // One that is still starting would write into the folder while it is taken away.
      () =>
        opening.then(
          (printer) => printer.close(),
          () => undefined,
        ),
    );
  });
}

function* jobs(places: ReadonlyMap<string, Document>): Generator<PrintJob> {
  for (const [to, document] of places) yield { html: document.html(), to };
}

/** The date to write into the files, where the one who builds them has set it: seconds since 1970. */
function sourceDate(): { readonly date?: Date } {
  const seconds = Number(process.env.SOURCE_DATE_EPOCH ?? '');
  return process.env.SOURCE_DATE_EPOCH && Number.isFinite(seconds) ? { date: new Date(seconds * 1000) } : {};
}
