import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'puppeteer';
import type { PracticeLesson } from '../../src/practice/practice-lesson.js';
import { practiceFile, practiceIndex, practicePage } from '../../src/practice/site.js';
import { findBrowser } from '../../src/print/browser.js';
import { launch } from '../../src/print/launch.js';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** A practice site in a folder of its own, and a browser to look at it, without a network. */
export class Site {
  readonly #folder = mkdtempSync(join(tmpdir(), 'benchleaf-practice-'));
  #browser: Browser | undefined;
  /** What the pages asked for besides themselves, and what went wrong in them. */
  readonly complaints: string[] = [];

  async open(lessons: readonly PracticeLesson[]): Promise<void> {
    mkdirSync(join(this.#folder, 'site'));
    const [first] = lessons;
    if (first) writeFileSync(join(this.#folder, 'site', 'index.html'), practiceIndex(first.head, lessons));
    for (const one of lessons)
      writeFileSync(join(this.#folder, 'site', practiceFile(one)), practicePage(one));
    this.#browser = await launch(await findBrowser(), join(this.#folder, 'profile'));
  }

  async close(): Promise<void> {
    await this.#browser?.close();
    rmSync(this.#folder, { recursive: true, force: true });
  }

  /** A file's page in a window as wide and high. */
  async window(file: string, width: number, height: number): Promise<Page> {
    const page = (await this.#browser?.newPage()) as Page;
    const url = pathToFileURL(join(this.#folder, 'site', file)).href;
    page.on('console', (said) => {
      if (['error', 'warn'].includes(said.type())) this.complaints.push(said.text());
    });
    page.on('pageerror', (error) => this.complaints.push(String(error)));
    page.on('request', (asked) => {
      if (!asked.url().startsWith('data:') && asked.url() !== url) this.complaints.push(asked.url());
    });
    await page.setViewport({ width, height });
    await page.goto(url, { waitUntil: 'load' });
    return page;
  }
}

/** What axe-core finds wrong on a page, by its rules. */
export async function violations(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const found = await axe.run();
    return found.violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html }) => `${id}: ${html.slice(0, 200)}`),
    );
  });
}
