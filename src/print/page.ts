import type { CDPSession } from 'puppeteer';
import { Guard } from './guard.js';
import { PrintError } from './print-error.js';

/**
 * Pairs of what is not as it should be and the complaint about it, once all fonts asked for have come. A part wider
 * than its page would make Chromium shrink the whole document without a word.
 */
const FAULTS = `document.fonts.ready.then(() => [
  ...(document.title ? [] : [['title', 'it has no title']]),
  ...(document.documentElement.lang ? [] : [['lang', 'it has no language']]),
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
])`;

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

/**
 * Opens the file in a page of its own, prints it, and closes the page, whatever happens. A page that is used
 * again keeps what it had: memory grows with every document, and structure ids differ.
 *
 * The page is driven by the browser's own protocol: puppeteer's `Page` sets up much that a print never uses, at
 * a fifth of the whole time of a short document.
 *
 * @param browser the browser's own session
 * @param url `file:` address of the HTML, in `folder`
 * @param folder all that the page may read, as an absolute path without symbolic links
 * @throws {PrintError} when anything in the page could not be read, drawn or set
 * @throws {Error} when the browser fails
 */
export async function printPage(browser: CDPSession, url: string, folder: string): Promise<Buffer> {
  const { targetId } = await browser.send('Target.createTarget', { url: 'about:blank' });
  try {
    const { sessionId } = await browser.send('Target.attachToTarget', { targetId, flatten: true });
    const session = browser.connection()?.session(sessionId);
    if (!session) throw new Error('the page ended before it was opened');
    const crash = new Promise<never>((_, reject) => {
      session.once('Inspector.targetCrashed', () => reject(new Error('the process behind the page ended')));
    });
    return await Promise.race([printIn(session, url, folder), crash]);
  } finally {
    await browser.send('Target.closeTarget', { targetId }).catch(() => undefined); // the browser may be gone
  }
}

async function printIn(session: CDPSession, url: string, folder: string): Promise<Buffer> {
  const guard = new Guard(session, folder);
  await Promise.all([
    guard.start(),
    session.send('Emulation.setScriptExecutionDisabled', { value: true }),
    session.send('Emulation.setEmulatedMedia', { media: 'print' }), // or fonts meant for print come late
    session.send('Page.enable'),
    session.send('Page.setLifecycleEventsEnabled', { enabled: true }),
  ]);
  try {
    await load(session, url);
    return await printSettled(session, guard);
  } catch (error) {
    guard.demandNone(); // what was refused comes before what came of it
    throw error;
  }
}

async function load(session: CDPSession, url: string): Promise<void> {
  const loaded = new Set<string>();
  let look = (): void => undefined;
  session.on('Page.lifecycleEvent', ({ name, loaderId }) => {
    if (name === 'load') loaded.add(loaderId);
    look();
  });
  const { loaderId = '', errorText } = await session.send('Page.navigate', { url });
  if (errorText) throw new Error(`the page could not be opened (${errorText})`);
  await new Promise<void>((resolve) => {
    look = () => loaded.has(loaderId) && resolve();
    look();
  });
}

/**
 * A font used in nothing but the page margins is asked for only while printing, and that print goes without it;
 * then it is printed again.
 */
async function printSettled(session: CDPSession, guard: Guard): Promise<Buffer> {
  for (let round = 0; round < 3; round += 1) {
    await demandSound(session, guard);
    const before = guard.requests;
    const { data } = await session.send('Page.printToPDF', PRINT);
    if (guard.requests === before) {
      guard.demandNone();
      return Buffer.from(data, 'base64');
    }
  }
  throw new PrintError(['it asks for more files each time it is printed']);
}

async function demandSound(session: CDPSession, guard: Guard): Promise<void> {
  const { result } = await session.send('Runtime.evaluate', {
    expression: FAULTS,
    awaitPromise: true,
    returnByValue: true,
  });
  for (const [about, complaint] of result.value as [string, string][]) guard.note(about, complaint);
  guard.demandNone();
}
