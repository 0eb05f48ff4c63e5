import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { untilSettled } from '../../src/print/paged.js';
import { type Places, placesIn } from '../../src/print/places.js';
import { PrintError } from '../../src/print/print-error.js';
import { Printer } from '../../src/print/printer.js';
import { lookAt } from './fingerprint.js';
import { page, workFolder } from './sample-page.js';

let work: string;
let printer: Printer;

beforeAll(async () => {
  work = await workFolder();
  printer = await Printer.open({ workFolder: work });
});

afterAll(async () => {
  await printer.close();
  await rm(work, { recursive: true });
});

/** Prints, and gives the places that were found, round by round. */
async function printed(html: (places: Places) => string) {
  const to = join(work, 'paged.pdf');
  const rounds: Places[] = [];
  const result = await printer.print({
    to,
    html: (places) => {
      rounds.push(places);
      return html(places);
    },
  });
  return { to, rounds, result };
}

const CSS = 'h1 { break-before: page }';
const chapter = (n: number, more = '') => `<h1 id="c${n}">Chapter ${n}</h1>${more}`;
const link = (id: string, said: string) => `<a href="#${id}">${said}</a>`;

describe('where anchors landed', () => {
  it('is known of those that are linked to, seen or not, over a tree of many pages', async () => {
    const numbers = Array.from({ length: 40 }, (_, n) => n + 1);
    const body =
      link('c1', 'first') +
      numbers.map((n) => chapter(n, n === 7 ? '<p>A <b id="in-7">word</b></p>' : '')).join('') +
      `<div hidden>${numbers.slice(1).map((n) => link(`c${n}`, ''))}${link('in-7', '')}</div><p id="alone">x</p>`;
    const { rounds, result } = await printed(() => page(body, CSS));
    expect(result.pages).toBe(41);
    const found = rounds.at(-1) as Places;
    for (const n of numbers) expect(found.get(`c${n}`)).toBe(n + 1);
    expect(found.get('in-7')).toBe(8);
    expect(found.has('alone')).toBe(false);
    expect(rounds).toHaveLength(2); // printed once, and the same again: nothing moved
  });

  it('is nothing in a document without links, or that is none', async () => {
    const { rounds } = await printed(() => page('<p>text</p>'));
    expect([...(rounds.at(-1) as Places)]).toEqual([]);
    expect(() => placesIn(Buffer.from('no pdf at all'))).toThrow('table of contents');
  });

  it('bears the name that the link has, odd letters by their codes', async () => {
    const { rounds } = await printed(() => page(`<p id="a(b) #é">x</p>${link('a(b)%20%23é', 'y')}`));
    expect([...(rounds.at(-1) as Places)]).toEqual([['a(b)%20%23%C3%A9', 1]]);
  });
});

describe('a document that tells its own page numbers', () => {
  it('is printed until they are true', async () => {
    // The number of a chapter makes so many lines that the chapters after it move.
    const { to, rounds } = await printed((places) => {
      const contents = [1, 2, 3].map(
        (n) => `<p>${link(`c${n}`, `Chapter ${n} is on ${places.get(`c${n}`) ?? '?'}`)}</p>`,
      );
      const filler =
        places.size > 0 ? '<div style="height: 250mm"></div><p>second page of the contents</p>' : '';
      return page(`${contents.join('')}${filler}${chapter(1)}${chapter(2)}${chapter(3)}`, CSS);
    });
    const { text } = await lookAt(to);
    expect(rounds).toHaveLength(4);
    expect(text[0]).toContain('Chapter 1 is on 3');
    expect(text[4]).toContain('Chapter 3');
    expect(text[0]).toContain('Chapter 3 is on 5');
  });

  it('is given up when they never are', async () => {
    const endless = printed((places) => {
      const pages = (places.get('end') ?? 1) % 2;
      return page(`<p>x</p>${'<h1>x</h1>'.repeat(pages)}<p id="end">${link('end', 'x')}</p>`, CSS);
    });
    await expect(endless).rejects.toThrow(PrintError);
    await expect(endless).rejects.toThrow(/paged\.pdf cannot be printed: its page numbers move/);
  });

  it('is given up at once when it cannot be printed', async () => {
    let rounds = 0;
    const failing = untilSettled(
      () => 'x',
      async () => {
        rounds += 1;
        throw new PrintError(['no']);
      },
    );
    await expect(failing).rejects.toThrow('no');
    expect(rounds).toBe(1);
  });
});
