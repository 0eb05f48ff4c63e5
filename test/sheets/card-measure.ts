import puppeteer, { type Browser } from 'puppeteer';
import { findBrowser } from '../../src/print/browser.js';

/** Measures cards before they are printed. */
export interface CardMeasure {
  /** The titles of the cards on which something is higher or wider than its room. */
  overfull(file: string): Promise<string[]>;
  close(): Promise<void>;
}

const OVERFULL = `document.fonts.ready.then(() => [...document.querySelectorAll('.bench-card')].filter((card) => {
  const face = card.querySelector('.face');
  return face.scrollHeight > face.clientHeight + 1 || face.scrollWidth > face.clientWidth + 1 ||
    card.scrollWidth > card.clientWidth + 1;
}).map((card) => card.querySelector('h1').textContent))`;

export async function openCardMeasure(): Promise<CardMeasure> {
  const { path, env } = await findBrowser();
  const browser: Browser = await puppeteer.launch({
    executablePath: path,
    headless: 'shell',
    args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
    env: { ...process.env, ...env },
  });
  return {
    async overfull(file) {
      const page = await browser.newPage();
      await page.emulateMediaType('print');
      await page.goto(`file://${file}`);
      const titles = await page.evaluate(OVERFULL);
      await page.close();
      return titles as string[];
    },
    close: () => browser.close(),
  };
}
