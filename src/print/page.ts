import type { CDPSession } from 'puppeteer-core';
import { Guard } from './guard.js';
import { PrintError } from './print-error.js';

/**
 * Once all fonts asked for have come: how many have, and pairs of what is not as it should be and the complaint about
 * it. A part wider than its page would make Chromium shrink the whole document without a word. A page that goes elsewhere
 * after a while would do so in the middle of the next document.
 */
const LOOK = `document.fonts.ready.then(() => ({ fonts: [...document.fonts].filter(({ status }) => status === 'loaded').length, faults: [
  ...(document.title ? [] : [['title', 'it has no title']]),
  ...(document.documentElement.lang ? [] : [['lang', 'it has no language']]),
  ...(document.querySelector('meta[http-equiv=refresh i]') ? [['refresh', 'it goes elsewhere by itself']] : []),
  ...[...document.fonts].filter((font) => font.status === 'error')
    .map(({ family }) => [family, 'the font ' + family + ' cannot be used']),
  ...[...document.images].filter((image) => !image.naturalWidth)
    .map(({ src, alt }) => [src, 'the picture "' + (alt || src.slice(0, 60)) + '" cannot be drawn']),
  ...[...document.body.children].filter((part) => part.scrollWidth > part.clientWidth + 1).map((part) => {
    const edge = part.getBoundingClientRect().right + 1;
    const over = [...part.querySelectorAll('*')].find((one) => one.getBoundingClientRect().right > edge);
    const said = (over?.textContent ?? '').trim().replace(/\\s+/g, ' ').slice(0, 40);
    return ['width', 'something in it is wider than the page' + (said && ': "' + said + '…"')];
  }),
] }))`;

/** Page size and margins stand in the style sheet and nowhere else. */
const PRINT = {
  preferCSSPageSize: true,
  printBackground: true,
  generateTaggedPDF: true,
  generateDocumentOutline: true,
  marginTop: 0,
  marginBottom: 0,
  marginLeft: 0,
  marginRight: 0,
};

/** How much HTML one tab prints, in letters, before what it has printed is cleared from its memory; else it all stays. */
const MOST_UNCLEARED = 300_000;

/**
 * A page of the browser. It prints one document after another: a process of its own for each, with its fonts read
 * anew, costs as much as the print of twelve pages. What was in it is replaced, as if it had never been.
 *
 * It is driven by the browser's own protocol: puppeteer's `Page` sets up much that a print never uses.
 */
export class Tab {
  readonly #browser: CDPSession;
  readonly #session: CDPSession;
  readonly #guard: Guard;
  readonly #id: string;
  #frame = '';
  #crash: Error | undefined;
  /** What whoever waits for the page does when the process behind it ends. */
  #giveUp = (_: Error): void => undefined;
  /** Letters printed since its memory was cleared. */
  #uncleared = 0;

  private constructor(browser: CDPSession, session: CDPSession, id: string, folder: string) {
    this.#browser = browser;
    this.#session = session;
    this.#id = id;
    this.#guard = new Guard(session, folder);
    session.once('Inspector.targetCrashed', () => {
      this.#crash = new Error('the process behind the page ended');
      this.#giveUp(this.#crash);
    });
  }

  /**
   * Opens an empty page.
   *
   * @param browser the browser's own session
   * @param folder what a document names lies there, and the page may read nothing else; an absolute path without symbolic links
   * @throws {Error} when the browser fails
   */
  static async open(browser: CDPSession, folder: string): Promise<Tab> {
    const { targetId } = await browser.send('Target.createTarget', { url: 'about:blank' });
    const { sessionId } = await browser.send('Target.attachToTarget', { targetId, flatten: true });
    const session = browser.connection()?.session(sessionId);
    if (!session) throw new Error('the page ended before it was opened');
    const tab = new Tab(browser, session, targetId, folder);
    await tab.#unlessCrashed(tab.#start());
    return tab;
  }

  async #start(): Promise<void> {
    const session = this.#session;
    await Promise.all([
      this.#guard.start(),
      session.send('Emulation.setScriptExecutionDisabled', { value: true }),
      session.send('Emulation.setEmulatedMedia', { media: 'print' }), // or fonts meant for print come late
      session.send('Page.enable'),
    ]);
    const loaded = this.#loaded();
    const { frameId, errorText } = await session.send('Page.navigate', {
      url: this.#guard.emptyPage,
    });
    if (errorText) throw new Error(`the page could not be opened (${errorText})`);
    this.#frame = frameId;
    await loaded;
  }

  /**
   * Prints a document in place of the one before. After a failure the tab is not to be used again.
   *
   * @throws {PrintError} when anything in it could not be read, drawn or set
   * @throws {Error} when the browser fails
   */
  async print(html: string): Promise<Buffer> {
    return this.#unlessCrashed(this.#print(html));
  }

  /** A promise raced against one for the crash would be kept by that, with the whole PDF, as long as the tab is open. */
  #unlessCrashed<T>(work: Promise<T>): Promise<T> {
    return new Promise((resolve, reject) => {
      this.#giveUp = reject;
      if (this.#crash) reject(this.#crash);
      work.then(resolve, reject);
    });
  }

  async #print(html: string): Promise<Buffer> {
    try {
      await this.#clear(html.length);
      const loaded = this.#loaded();
      await this.#session.send('Page.setDocumentContent', { frameId: this.#frame, html });
      await loaded;
      return await printSettled(this.#session, this.#guard);
    } catch (error) {
      this.#guard.demandNone(); // what was refused comes before what came of it
      throw error;
    }
  }

  async #clear(next: number): Promise<void> {
    if (this.#uncleared > 0 && this.#uncleared + next > MOST_UNCLEARED) {
      await this.#session.send('HeapProfiler.collectGarbage');
      this.#uncleared = 0;
    }
    this.#uncleared += next;
  }

  #loaded(): Promise<void> {
    return new Promise((resolve) => this.#session.once('Page.loadEventFired', () => resolve()));
  }

  async close(): Promise<void> {
    await this.#browser.send('Target.closeTarget', { targetId: this.#id }).catch(() => undefined); // it may be gone
  }
}

/**
 * A font used in nothing but the page margins is asked for only while printing, and that print goes without it;
 * then it is printed again. One that an earlier document has read is not asked for, so it is looked at as well how
 * many are there.
 */
async function printSettled(session: CDPSession, guard: Guard): Promise<Buffer> {
  let fonts = await demandSound(session, guard);
  for (let round = 0; round < 3; round += 1) {
    const before = guard.requests;
    const { data } = await session.send('Page.printToPDF', PRINT);
    const now = await demandSound(session, guard);
    if (guard.requests === before && now === fonts) return Buffer.from(data, 'base64');
    fonts = now;
  }
  throw new PrintError(['it asks for more files each time it is printed']);
}

/** @returns how many fonts are in use */
async function demandSound(session: CDPSession, guard: Guard): Promise<number> {
  const { result } = await session.send('Runtime.evaluate', {
    expression: LOOK,
    awaitPromise: true,
    returnByValue: true,
  });
  const { fonts, faults } = result.value as { fonts: number; faults: [string, string][] };
  for (const [about, complaint] of faults) guard.note(about, complaint);
  guard.demandNone();
  return fonts;
}
