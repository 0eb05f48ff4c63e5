import { mkdtempSync, realpathSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'puppeteer';
import { MachineError } from '../diagnostics/errors.js';
import { findBrowser } from './browser.js';

/** One HTML document to print whole. */
export interface PrintJob {
  readonly html: string;
  /** Path of the PDF; its folder must be there. */
  readonly to: string;
}

/** Longest time one document may take, ms. */
const PATIENCE = 120_000;

const FLAGS = [
  '--font-render-hinting=none',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  '--disable-gpu',
];

/** Prints HTML to PDF with one browser, a new page for each document. Page size and margins come from CSS alone. */
export class Printer {
  private constructor(
    private readonly browser: Browser,
    private readonly workFolder: string,
  ) {}

  /**
   * @param workFolder the only folder whose files a page may fetch; each document's HTML is written there
   * @throws {MachineError} no browser, or it does not start
   */
  static async open(workFolder: string): Promise<Printer> {
    const { path } = await findBrowser();
    const { default: puppeteer } = await import('puppeteer');
    // Chromium has no sandbox of its own for root.
    const args = process.getuid?.() === 0 ? [...FLAGS, '--no-sandbox'] : FLAGS;
    try {
      const browser = await puppeteer.launch({ executablePath: path, args, handleSIGINT: false });
      return new Printer(browser, realpathSync(workFolder));
    } catch (error) {
      throw new MachineError(
        `the browser ${path} does not start: ${(error as Error).message.split('\n')[0]}`,
        ['Set BENCHLEAF_BROWSER to another one'],
      );
    }
  }

  /**
   * Prints one document; the PDF appears whole or not at all.
   *
   * @throws {Error} when the page asks for anything outside the work folder, or for a file that is not there;
   *   {MachineError} when the PDF cannot be written
   */
  async print({ html, to }: PrintJob): Promise<void> {
    const page = await this.browser.newPage();
    const folder = mkdtempSync(join(this.workFolder, 'document-'));
    try {
      const faults = await this.guard(page);
      const file = join(folder, 'document.html');
      writeFileSync(file, html);
      await page.setJavaScriptEnabled(false);
      await page.goto(pathToFileURL(file).href, { timeout: PATIENCE });
      if (faults.length > 0) throw new Error(`the page cannot be printed: ${faults.join('; ')}`);
      const pdf = await page.pdf({
        preferCSSPageSize: true,
        printBackground: true,
        tagged: true,
        outline: true,
        timeout: PATIENCE,
      });
      if (faults.length > 0) throw new Error(`the page cannot be printed: ${faults.join('; ')}`);
      writeWhole(to, pdf);
    } finally {
      rmSync(folder, { recursive: true, force: true });
      await page.close().catch(() => {});
    }
  }

  async close(): Promise<void> {
    await this.browser.close();
  }

  /** Lets a page fetch files under the work folder and data: addresses, and notes everything that failed. */
  private async guard(page: Page): Promise<string[]> {
    const faults: string[] = [];
    const allowed = `${pathToFileURL(this.workFolder).href}/`;
    await page.setRequestInterception(true);
    page.on('request', (request) => {
      const url = request.url();
      if (url.startsWith('data:') || url.startsWith(allowed)) void request.continue();
      else void request.abort('accessdenied');
    });
    page.on('requestfailed', (request) => faults.push(`${request.url().slice(0, 120)} was not fetched`));
    page.on('pageerror', (error) => faults.push(String(error)));
    return faults;
  }
}

/** Writes beside the place and renames, so that no half file is ever seen. */
function writeWhole(to: string, bytes: Uint8Array): void {
  const part = join(dirname(to), `.${basename(to)}.${process.pid}.part`);
  try {
    writeFileSync(part, bytes);
    renameSync(part, to);
  } catch (error) {
    rmSync(part, { force: true });
    throw new MachineError(`${to} cannot be written: ${(error as Error).message}`);
  }
}
