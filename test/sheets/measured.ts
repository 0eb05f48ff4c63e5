import puppeteer, { type Browser } from 'puppeteer';
import { findBrowser } from '../../src/print/browser.js';

/** Asks pages before they are printed. */
export interface Measured {
  /** What a script makes of a page, once its faces are there. */
  ask(file: string, script: string): Promise<unknown>;
  close(): Promise<void>;
}

export async function openMeasured(): Promise<Measured> {
  const { path, env } = await findBrowser();
  const browser: Browser = await puppeteer.launch({
    executablePath: path,
    headless: 'shell',
    args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
    env: { ...process.env, ...env },
  });
  return {
    async ask(file, script) {
      const page = await browser.newPage();
      await page.emulateMediaType('print');
      await page.goto(`file://${file}`);
      const told = await page.evaluate(`document.fonts.ready.then(() => ${script})`);
      await page.close();
      return told;
    },
    close: () => browser.close(),
  };
}
