import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import type { Browser, CDPSession } from 'puppeteer-core';
import { MachineError } from '../diagnostics/errors.js';
import type { BrowserChoice } from './browser.js';
import { launch } from './launch.js';
import { Tab } from './page.js';
import { PrintError } from './print-error.js';

/** The browser, or its process behind the page, ended, hung or failed before the document was printed. */
export class PressFailure extends Error {}

/** One running browser. */
export class Press {
  readonly #browser: Browser;
  readonly #session: CDPSession;
  readonly #workFolder: string;
  readonly #profile: string;
  /** Resolves when the browser ends. */
  readonly #ended: Promise<void>;
  /**
   * What each print under way does when the browser ends. A promise raced against `#ended` would be kept by it, with
   * the whole PDF, for as long as the browser runs.
   */
  readonly #whenEnded = new Set<() => void>();
  /** Tabs that print nothing at the moment. */
  readonly #idle: Tab[] = [];
  #running = 0;
  #killed = false;
  #retired = false;
  /** What the browser calls itself, `Chrome/147.0.7727.0`. */
  readonly version: string;
  /** How many documents it has been given. */
  taken = 0;

  private constructor(
    browser: Browser,
    version: string,
    session: CDPSession,
    workFolder: string,
    profile: string,
  ) {
    this.#browser = browser;
    this.version = version;
    this.#session = session;
    this.#workFolder = workFolder;
    this.#profile = profile;
    this.#ended = new Promise((resolve) => {
      browser.once('disconnected', () => resolve());
      if (!browser.connected) resolve();
    });
    this.#ended.then(() => {
      for (const end of this.#whenEnded) end();
    });
  }

  /**
   * Starts a browser.
   *
   * @param workFolder as an absolute path without symbolic links; the browser keeps its own files there too
   * @throws {MachineError} when it does not start
   */
  static async open(choice: BrowserChoice, workFolder: string): Promise<Press> {
    const profile = await mkdtemp(join(workFolder, '.browser-'));
    try {
      const browser = await launch(choice, profile);
      const session = await browser.target().createCDPSession();
      const attach = { autoAttach: false, waitForDebuggerOnStart: false, flatten: true }; // we do that ourselves
      await session.connection()?.send('Target.setAutoAttach', attach);
      return new Press(browser, await browser.version(), session, workFolder, profile);
    } catch (error) {
      await removeProfile(profile);
      if (error instanceof MachineError) throw error;
      throw new MachineError(`the browser ${choice.path} ended as it started: ${(error as Error).message}`);
    }
  }

  get alive(): boolean {
    return this.#browser.connected && !this.#killed;
  }

  /**
   * Prints one document; several may be printed at once.
   *
   * @param patience milliseconds
   * @throws {PrintError} when the document is at fault
   * @throws {PressFailure} when the browser is; one that hung has been ended
   */
  async print(html: string, patience: number): Promise<Buffer> {
    let giveUp = (_: PressFailure): void => undefined;
    const failed = new Promise<never>((_, reject) => {
      giveUp = reject;
    });
    const end = (): void => giveUp(new PressFailure('the browser ended'));
    const timer = setTimeout(() => {
      this.#kill();
      giveUp(new PressFailure(`the browser did not finish within ${patience / 1000} s`));
    }, patience);
    this.#whenEnded.add(end);
    if (!this.#browser.connected) end();
    this.#running += 1;
    try {
      return await Promise.race([this.#printed(html), failed]);
    } catch (error) {
      if (error instanceof PrintError || error instanceof PressFailure) throw error;
      throw new PressFailure(this.alive ? (error as Error).message : 'the browser ended', { cause: error });
    } finally {
      clearTimeout(timer);
      this.#whenEnded.delete(end);
      this.#running -= 1;
      if (this.#retired) await this.retire();
    }
  }

  /** A tab is used again after a print that went well. */
  async #printed(html: string): Promise<Buffer> {
    const tab = this.#idle.pop() ?? (await Tab.open(this.#session, this.#workFolder));
    let sound = false;
    try {
      const pdf = await tab.print(html);
      sound = true;
      return pdf;
    } finally {
      if (sound) this.#idle.push(tab);
      else await tab.close();
    }
  }

  /** Takes it out of use: it is closed as soon as it prints nothing. */
  async retire(): Promise<void> {
    this.#retired = true;
    if (this.#running === 0) await this.close();
  }

  /** Ends the browser and removes its files. Asked politely it clears up after itself, but it may hang. */
  async close(): Promise<void> {
    const polite = this.alive ? this.#browser.close().catch(() => undefined) : undefined;
    await Promise.race([polite, sleep(1000, undefined, { ref: false })]);
    this.#kill();
    await this.#ended;
    await removeProfile(this.#profile);
  }

  /** At once and with all its children. */
  #kill(): void {
    this.#killed = true;
    const pid = this.#browser.process()?.pid;
    if (pid === undefined) return;
    try {
      process.kill(process.platform === 'win32' ? pid : -pid, 'SIGKILL');
    } catch {
      // it has ended already
    }
  }
}

/** The last of the browser's processes may still be writing; what stays goes with the work folder. */
async function removeProfile(profile: string): Promise<void> {
  await rm(profile, { recursive: true, force: true, maxRetries: 5 }).catch(() => undefined);
}
