import { MachineError } from '../diagnostics/errors.js';
import type { BrowserChoice } from './browser.js';
import { Press } from './press.js';

/** Keeps one browser running: a fresh one takes over when it is worn or has ended. */
export class PressRoom {
  readonly #choice: BrowserChoice;
  readonly #workFolder: string;
  readonly #documentsPerBrowser: number;
  readonly #all = new Set<Press>();
  #current: Promise<Press>;
  #version: string | undefined;
  #closed = false;

  constructor(choice: BrowserChoice, workFolder: string, documentsPerBrowser: number) {
    this.#choice = choice;
    this.#workFolder = workFolder;
    this.#documentsPerBrowser = documentsPerBrowser;
    this.#current = this.#open();
  }

  /**
   * @returns the version of the browser, the same for all that is printed here
   * @throws {MachineError} when the first browser does not start
   */
  async ready(): Promise<string> {
    return (await this.#current).version;
  }

  /**
   * The browser to print the next document with; counts as one document.
   *
   * @throws {MachineError} when a fresh browser does not start
   */
  async take(): Promise<Press> {
    for (;;) {
      const offered = this.#current;
      const press = await offered;
      if (this.#closed) throw new Error('the printer is closed');
      if (press.alive && press.taken < this.#documentsPerBrowser) {
        press.taken += 1;
        return press;
      }
      if (this.#current === offered) {
        this.#current = this.#open();
        void press.retire();
      }
    }
  }

  /** Ends every browser, at once. */
  async close(): Promise<void> {
    this.#closed = true;
    await this.#current.catch(() => undefined);
    await Promise.all([...this.#all].map((press) => press.close()));
  }

  async #open(): Promise<Press> {
    const press = await Press.open(this.#choice, this.#workFolder);
    this.#all.add(press);
    this.#version ??= press.version;
    if (press.version !== this.#version)
      throw new MachineError(`the browser ${this.#choice.path} was changed meanwhile: ${press.version}`, [
        'Make the documents again.',
      ]);
    return press;
  }
}
