import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { MachineError } from '../diagnostics/errors.js';
import { because } from '../print/disk.js';
import type { Printer } from '../print/printer.js';
import { Latest } from './latest.js';
import { openPrinter, printing } from './open-printer.js';
import { WorkedLessons } from './worked-lessons.js';

/** What stands from one making to the next: an open printer, the lessons as they were worked, what was made. */
export class Standing {
  readonly lessons = new WorkedLessons();
  readonly latest = new Latest();
  #folder: string | undefined;
  #opening: Promise<Printer> | undefined;

  /**
   * The printer, with all that sheets refer to in its folder. It is opened when it is first asked for; after that has
   * failed, when it is asked for again.
   *
   * @param date written into the files, where one is told
   * @throws {MachineError} when there is no browser, or no room for its files
   */
  printer(date: { readonly date?: Date }): Promise<Printer> {
    if (this.#opening) return this.#opening;
    const opening = this.#open(date);
    this.#opening = opening;
    opening.catch(() => this.close());
    return opening;
  }

  /** Ends the browser and removes its files. */
  async close(): Promise<void> {
    const [opening, folder] = [this.#opening, this.#folder];
    this.#opening = undefined;
    this.#folder = undefined;
    const printer = await opening?.catch(() => undefined);
    await printer?.close();
    if (folder) await rm(folder, { recursive: true, force: true, maxRetries: 3 });
  }

  async #open(date: { readonly date?: Date }): Promise<Printer> {
    const folder = await mkdtemp(join(tmpdir(), 'benchleaf-watch-')).catch((error: unknown) => {
      throw new MachineError(`cannot make a folder in ${tmpdir()}: ${because(error)}`);
    });
    this.#folder = folder;
    return openPrinter(folder, await printing(), date);
  }
}
