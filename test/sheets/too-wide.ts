import puppeteer, { type Browser } from 'puppeteer';
import { findBrowser } from '../../src/print/browser.js';

/** Measures pages before they are printed. */
export interface Measure {
  /** By how much each part of a page is wider than the page has room for, in CSS pixels; nothing where all fits. */
  tooWide(file: string): Promise<number[]>;
  close(): Promise<void>;
}

export async function openMeasure(): Promise<Measure> {
  const { path, env } = await findBrowser();
  const browser: Browser = await puppeteer.launch({
    executablePath: path,
    headless: 'shell',
    args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
    env: { ...process.env, ...env },
  });
  return {
    async tooWide(file) {
      const page = await browser.newPage();
      await page.emulateMediaType('print');
      await page.goto(`file://${file}`);
      const over = await page.evaluate(
        'document.fonts.ready.then(() => [...document.body.children].map((part) => part.scrollWidth - part.clientWidth))',
      );
      await page.close();
      return (over as number[]).filter((pixels) => pixels > 1);
    },
    close: () => browser.close(),
  };
}
