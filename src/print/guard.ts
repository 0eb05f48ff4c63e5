import { realpath } from 'node:fs/promises';
import { sep } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { CDPSession } from 'puppeteer-core';
import { PrintError } from './print-error.js';

const EMPTY = {
  responseCode: 200,
  responseHeaders: [{ name: 'Content-Type', value: 'text/html' }],
  body: Buffer.from('<!doctype html>').toString('base64'),
};

const OUTSIDE = 'was refused: it is outside the work folder';

/** The path of a file of this machine; undefined for any other address. A path of none is as good as any outside. */
function pathOf(url: string): string | undefined {
  const address = URL.canParse(url) ? new URL(url) : undefined;
  if (address?.protocol !== 'file:' || address.host !== '') return undefined;
  try {
    return fileURLToPath(address);
  } catch {
    return ''; // such as a slash that is hidden as %2F
  }
}

/**
 * Lets a page read files of its own work folder and nothing else, and keeps a list of what went wrong.
 *
 * Text that is inside the page (`data:`) is not a request and never comes here.
 */
export class Guard {
  readonly #folder: string;
  readonly #session: CDPSession;
  readonly #asked = new Map<string, string>();
  readonly #problems = new Map<string, string>();
  /** What was asked for, in order: looking a file up takes longer at times, so problems come to light in any. */
  readonly #places = new Map<string, number>();
  #requests = 0;

  /** @param folder the work folder, as an absolute path without symbolic links */
  constructor(session: CDPSession, folder: string) {
    this.#session = session;
    this.#folder = folder;
    session.on('Fetch.requestPaused', ({ requestId, request }) => void this.#decide(requestId, request.url));
    session.on('Network.requestWillBeSent', ({ requestId, request }) =>
      this.#asked.set(requestId, request.url),
    );
    session.on('Network.loadingFailed', ({ requestId, errorText, canceled }) => {
      if (canceled) return; // as when the process behind the page ends, which is not the fault of the page
      const url = this.#asked.get(requestId) ?? requestId;
      this.note(url, `${this.#shown(url)} could not be read (${errorText})`);
    });
    session.on('Log.entryAdded', ({ entry }) => {
      const about = entry.source === 'network' ? entry.url : undefined; // others bear the address of the page
      if (entry.level === 'error') this.note(about ?? entry.text, entry.text);
    });
  }

  /** Address of an empty page in the folder, which is there for nobody else: what a document names lies beside it. */
  get emptyPage(): string {
    return `${pathToFileURL(this.#folder)}/.empty.html`;
  }

  /** Everything is asked about before it is read. */
  async start(): Promise<void> {
    await Promise.all([
      this.#session.send('Fetch.enable', { patterns: [{ urlPattern: '*' }] }),
      this.#session.send('Network.enable'),
      this.#session.send('Log.enable'),
    ]);
  }

  /** How many files have been asked for up to now. */
  get requests(): number {
    return this.#requests;
  }

  /** @throws {PrintError} naming all that went wrong, in the order it was asked for, if anything did */
  demandNone(): void {
    if (this.#problems.size === 0) return;
    const place = (about: string): number => this.#places.get(about) ?? Number.MAX_SAFE_INTEGER;
    const inOrder = [...this.#problems].sort(([a], [b]) => place(a) - place(b));
    throw new PrintError(inOrder.map(([, problem]) => problem));
  }

  /** Of several complaints about one thing the first is the best. */
  note(about: string, problem: string): void {
    if (!this.#problems.has(about)) this.#problems.set(about, problem);
  }

  async #decide(requestId: string, url: string): Promise<void> {
    await this.#answer(requestId, url).catch(() => undefined); // the page may be gone by now
  }

  async #answer(requestId: string, url: string): Promise<void> {
    if (url === this.emptyPage) return this.#session.send('Fetch.fulfillRequest', { requestId, ...EMPTY });
    this.#requests += 1;
    if (!this.#places.has(url)) this.#places.set(url, this.#places.size);
    const refused = await this.#whyNot(url);
    if (!refused) return this.#session.send('Fetch.continueRequest', { requestId });
    this.note(url, `${this.#shown(url)} ${refused}`);
    return this.#session.send('Fetch.failRequest', { requestId, errorReason: 'AccessDenied' });
  }

  /** What is elsewhere by its address is not even looked for: to look may call another machine, and tells what is there. */
  async #whyNot(url: string): Promise<string | undefined> {
    const path = pathOf(url);
    if (path === undefined) return 'was refused: a page may fetch nothing from the network';
    if (!this.#holds(path)) return OUTSIDE;
    try {
      return this.#holds(await realpath(path)) ? undefined : OUTSIDE;
    } catch {
      return 'does not exist';
    }
  }

  #holds(path: string): boolean {
    return path.startsWith(this.#folder + sep);
  }

  #shown(url: string): string {
    const home = `${pathToFileURL(this.#folder)}/`;
    return url.startsWith(home) ? url.slice(home.length) : url;
  }
}
