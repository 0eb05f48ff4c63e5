import { realpath } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { MachineError } from '../diagnostics/errors.js';
import { findBrowser } from './browser.js';
import { because, placeWhole } from './disk.js';
import { type PagedHtml, untilSettled } from './paged.js';
import { pageCount, settled } from './pdf.js';
import { PressFailure } from './press.js';
import { PressRoom } from './press-room.js';
import { PrintError } from './print-error.js';
import { noStore, type Printed, type PrintStore } from './print-store.js';
import { printerVersion } from './printer-version.js';

/** One document to print. */
export interface PrintJob {
  /**
   * The whole page, with a language and a title; the files that it refers to lie in the work folder. One that tells its
   * own page numbers is printed until they are true.
   */
  readonly html: string | PagedHtml;
  /** Absolute path of the PDF. */
  readonly to: string;
}

/** One document printed. */
export interface PrintResult {
  readonly to: string;
  readonly pages: number;
  readonly bytes: number;
  /** Of the file, in hexadecimal. */
  readonly sha256: string;
  /** Whether it was printed before, and not now. */
  readonly kept: boolean;
  readonly milliseconds: number;
}

export interface PrinterOptions {
  /** A private folder: the only one that the pages may read. */
  readonly workFolder: string;
  /** After so many documents a fresh browser takes over; 300 unless told. */
  readonly documentsPerBrowser?: number;
  /** The date written into the files, so that they are the same each time; without it, the time of printing. */
  readonly date?: Date;
  /** How long one document may take, in milliseconds; two minutes unless told. */
  readonly patience?: number;
  /** Where what was printed is kept from run to run. */
  readonly store?: PrintStore;
}

/** More at once than this gain nothing: the browser's own process is then the narrow place. */
const MOST_AT_ONCE = 4;

/** Prints HTML to PDF: tagged, with an outline, at true scale, each document whole or not at all. */
export class Printer {
  readonly #room: PressRoom;
  readonly #date: Date | undefined;
  readonly #patience: number;
  readonly #store: PrintStore;
  /** The version of the browser. */
  readonly browser: string;

  private constructor(
    room: PressRoom,
    browser: string,
    { date, patience = 120_000, store = noStore }: PrinterOptions,
  ) {
    this.#room = room;
    this.#date = date;
    this.#patience = patience;
    this.#store = store;
    this.browser = browser;
  }

  /**
   * Finds a browser and starts it. Ask for `close()` in a `finally`, and on Ctrl-C: nobody else does.
   *
   * @throws {MachineError} when there is no browser, or it does not start, or there is no such work folder
   */
  static async open(options: PrinterOptions): Promise<Printer> {
    const workFolder = await realpath(options.workFolder).catch((error: unknown) => {
      throw new MachineError(`cannot use the work folder ${options.workFolder}: ${because(error)}`);
    });
    const room = new PressRoom(await findBrowser(), workFolder, options.documentsPerBrowser ?? 300);
    return new Printer(room, await room.ready(), options);
  }

  /**
   * Prints one document.
   *
   * @throws {PrintError} when something in the page could not be read, drawn or set
   * @throws {MachineError} when the browser failed twice, or the PDF cannot be written
   */
  async print({ html, to }: PrintJob): Promise<PrintResult> {
    const start = performance.now();
    let printed: Printed | undefined;
    const once = async (one: string): Promise<Buffer> => {
      printed = await this.#store.printed(this.#dependsOn(one), async () =>
        settled(await this.#pdfOf(one, to), this.#date),
      );
      return printed.pdf;
    };
    const pdf = await (typeof html === 'string' ? once(html) : untilSettled(html, once)).catch(
      (error: unknown) => {
        throw error instanceof PrintError ? new PrintError(error.problems, to) : error;
      },
    );
    const { sha256, file, kept } = printed as Printed; // the last that was printed
    await placeWhole(to, pdf, file);
    return {
      to,
      pages: pageCount(pdf),
      bytes: pdf.length,
      sha256,
      kept,
      milliseconds: performance.now() - start,
    };
  }

  /** All that a PDF depends on but the files in the work folder. */
  #dependsOn(html: string): string[] {
    return [printerVersion, this.browser, this.#date?.toISOString() ?? '', html];
  }

  /**
   * Prints all, as many at once as there are cores, four at most. After a failure no further one is begun.
   *
   * @param onDone told of each document as it is done
   * @returns in the order of the jobs
   * @throws what `print` throws, the first of it, when those under way have ended
   */
  async printAll(
    jobs: Iterable<PrintJob> | AsyncIterable<PrintJob>,
    onDone?: (result: PrintResult) => void,
  ): Promise<PrintResult[]> {
    const source = Symbol.asyncIterator in jobs ? jobs[Symbol.asyncIterator]() : jobs[Symbol.iterator]();
    const results: PrintResult[] = [];
    const failures: unknown[] = [];
    let begun = 0;
    const worker = async (): Promise<void> => {
      while (failures.length === 0) {
        const next = await source.next();
        if (next.done) return;
        const place = begun++;
        const result = await this.print(next.value);
        results[place] = result;
        onDone?.(result);
      }
    };
    const atOnce = Math.min(availableParallelism(), MOST_AT_ONCE);
    const workers = Array.from({ length: atOnce }, () => worker().catch((error) => failures.push(error)));
    await Promise.all(workers);
    if (failures.length === 0) return results;
    await source.return?.();
    throw failures[0];
  }

  /** Ends the browser at once; documents under way fail. */
  async close(): Promise<void> {
    await this.#room.close();
  }

  /** A browser that ends or hangs gets a second try; a page at fault does not. */
  async #pdfOf(html: string, to: string): Promise<Buffer> {
    for (let attempt = 1; ; attempt += 1) {
      const press = await this.#room.take();
      try {
        return await press.print(html, this.#patience);
      } catch (error) {
        if (!(error instanceof PressFailure)) throw error;
        if (attempt === 2) {
          throw new MachineError(`cannot print ${to}: ${error.message}, twice`, [
            'Set BENCHLEAF_BROWSER to the path of another Chrome, Chromium or Edge.',
          ]);
        }
      }
    }
  }
}
