import { readFileSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { PrintCache } from '../../src/pack/print-cache.js';
import type { PagedHtml } from '../../src/print/paged.js';
import { Printer, type PrinterOptions } from '../../src/print/printer.js';
import { fingerprint } from '../print/fingerprint.js';
import { page, workFolder } from '../print/sample-page.js';

let work: string;
beforeAll(async () => {
  work = await workFolder();
});
afterAll(() => rm(work, { recursive: true }));

const DATE = new Date('2026-11-25T12:10:07Z');
let count = 0;

/** Prints as another run would. */
async function printed(html: string | PagedHtml, more: Partial<PrinterOptions> = {}) {
  const store = new PrintCache(join(work, '.cache'), work);
  const printer = await Printer.open({ workFolder: work, date: DATE, store, ...more });
  try {
    return await printer.print({ html, to: join(work, `.${++count}.pdf`) });
  } finally {
    await printer.close();
  }
}

/** The same as long as no page is known, whatever it says of the pages. */
const contents =
  (said: string): PagedHtml =>
  (places) =>
    page(
      `<p><a href="#end">${places.has('end') ? `${said} ${places.get('end')}` : 'The end'}</a></p><h1 id="end">End</h1>`,
      'h1 { break-before: page }',
    );

it('a document that tells its own page numbers is kept by what it says of them', async () => {
  const first = await printed(contents('The end is on page'));
  expect(first.kept).toBe(false);
  const again = await printed(contents('The end is on page'));
  expect(again.kept).toBe(true);
  expect(readFileSync(again.to)).toEqual(readFileSync(first.to));
  const other = await printed(contents('You get there on page'));
  expect(other.kept).toBe(false);
  expect((await fingerprint(other.to)).text[0]).toContain('You get there on page 2');
});

it('a page is printed anew for another date, and for words that differ by a letter', async () => {
  const html = page('<p>A wheel of 60 teeth</p>');
  const first = await printed(html);
  const again = await printed(html);
  expect([first.kept, again.kept]).toEqual([false, true]);
  expect(again).toMatchObject({ pages: first.pages, bytes: first.bytes, sha256: first.sha256 });
  expect((await printed(html, { date: new Date(0) })).kept).toBe(false);
  expect((await printed(page('<p>A wheel of 61 teeth</p>'))).kept).toBe(false);
});
