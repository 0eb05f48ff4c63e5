import { writeFileSync } from 'node:fs';
import { sha256Of } from '../print/print-store.js';
import type { Printer, PrintJob } from '../print/printer.js';
import type { Tray } from './delivery.js';
import type { Kind } from './kinds.js';
import type { Document } from './plan.js';
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
  /** It was printed before, and taken from what was kept. */
  readonly kept?: true;
  /** What is told of it, a sentence each. */
  readonly reports?: readonly string[];
}

/** A document that lies in the tray. */
export interface ProducedDocument extends MadeDocument {
  /** As planned: where it goes in the folder, its parts with `/` between them. */
  readonly name: string;
  /** Of the file, in hexadecimal. */
  readonly sha256: string;
}

interface Finished {
  readonly to: string;
  readonly pages: number;
  readonly bytes: number;
  readonly sha256: string;
  readonly kept: boolean;
}

/**
 * Prints documents into the tray, and writes files of data; tells how far it has come.
 *
 * @returns in the order of the documents
 * @throws what printing throws
 */
export async function produce(
  documents: readonly Document[],
  tray: Tray,
  printer: Printer | undefined,
  shown: Omit<ProgressOptions, 'total'>,
): Promise<ProducedDocument[]> {
  const progress = showProgress({ ...shown, total: documents.length });
  const places = new Map(documents.map((one) => [tray.place(one.name), one]));
  const finished = new Map<string, Finished>();
  const done = (file: Finished): void => {
    finished.set(file.to, file);
    progress.done(tray.destination(file.to), file.pages);
  };
  await tidily(async () => {
    const printed = jobs(places, done);
    if (printer) await printer.printAll(printed, done);
    else for (const { to } of printed) throw new Error(`there is no printer for ${to}`);
  }, progress.end);
  return [...places].map(([to, { kind, name, variant, learner, reports }]) => {
    const { pages, bytes, sha256, kept } = finished.get(to) as Finished;
    return {
      kind,
      file: tray.destination(to),
      pages,
      bytes,
      name,
      sha256,
      ...(variant === undefined ? {} : { variant }),
      ...(learner === undefined ? {} : { learner }),
      ...(kept ? { kept } : {}),
      ...(reports === undefined ? {} : { reports }),
    };
  });
}

/** What is to be printed, in its turn; a file of data is written when its turn comes. */
function* jobs(places: ReadonlyMap<string, Document>, done: (file: Finished) => void): Generator<PrintJob> {
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
    done({ to, pages: 0, bytes: bytes.length, sha256: sha256Of(bytes), kept: false });
  }
}
