// The floor of this engine: the same HTML files, loaded and printed by the same browser, and nothing else done.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import puppeteer from 'puppeteer';
import { findBrowser } from '../../dist/print/browser.js';
import { watchMemory } from './memory.mjs';

/**
 * Prints HTML files one after another, as many at once as our printer does, each in a page of its own.
 *
 * @param {readonly string[]} files absolute paths
 * @param {boolean} [watched] to count the processor's time, which makes it slower
 * @returns {Promise<{ seconds: number, cpu: number }>} from the first page to the last, with the browser already up;
 *   `cpu` seconds of the processor, of the browser with all its processes
 */
export async function barePrint(files, watched = false) {
  const { path, env = {} } = await findBrowser();
  const profile = mkdtempSync(join(tmpdir(), 'benchleaf-bare-'));
  const browser = await puppeteer.launch({
    executablePath: path,
    headless: 'shell',
    args: ['--font-render-hinting=none', '--disable-gpu', '--no-sandbox'],
    env: { ...process.env, ...env },
    userDataDir: profile,
    pipe: true,
  });
  try {
    const session = await browser.target().createCDPSession();
    await printOne(session, files[0]); // the first page of a browser is slow, whoever prints it
    const watch = watched ? watchMemory({ root: browser.process()?.pid }) : undefined;
    const start = performance.now();
    const waiting = [...files];
    const worker = async () => {
      for (let file = waiting.shift(); file !== undefined; file = waiting.shift())
        await printOne(session, file);
    };
    await Promise.all(Array.from({ length: Math.min(availableParallelism(), 4) }, worker));
    return { seconds: (performance.now() - start) / 1000, cpu: watch?.stop().peak.cpu ?? 0 };
  } finally {
    await browser.close();
    rmSync(profile, { recursive: true, force: true });
  }
}

async function printOne(browser, file) {
  const { targetId } = await browser.send('Target.createTarget', { url: 'about:blank' });
  const { sessionId } = await browser.send('Target.attachToTarget', { targetId, flatten: true });
  const page = browser.connection().session(sessionId);
  await page.send('Page.enable');
  const loaded = new Promise((resolve) => page.once('Page.loadEventFired', resolve));
  await page.send('Page.navigate', { url: pathToFileURL(file).href });
  await loaded;
  await page.send('Runtime.evaluate', {
    expression: 'document.fonts.ready.then(() => 1)',
    awaitPromise: true,
  });
  const { data } = await page.send('Page.printToPDF', {
    preferCSSPageSize: true,
    printBackground: true,
    generateTaggedPDF: true,
    generateDocumentOutline: true,
  });
  writeFileSync(`${file}.pdf`, Buffer.from(data, 'base64'));
  await browser.send('Target.closeTarget', { targetId });
}
