import { mkdtemp, realpath, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Kind, printedKinds } from '../../src/pack/kinds.js';
import { type Document, type Order, planOf } from '../../src/pack/plan.js';
import type { Places } from '../../src/print/places.js';
import { Printer } from '../../src/print/printer.js';
import { copyAssets } from '../../src/sheets/assets.js';
import { type Look, lookAt } from '../print/fingerprint.js';
import { documentsOf, htmlOf, orderOf } from './class-order.js';
import { textOf } from './class-page.js';

const LESSONS = ['06-blank-and-pinion-sizes', '12-over-travel-and-stacks', '16-simple-indexing'];
const BOOK: readonly Kind[] = ['book'];

/** A book as it was printed. */
interface Printed extends Look {
  readonly html: string;
  readonly places: Places;
  readonly rounds: number;
}

let work = '';
let printer: Printer;

beforeAll(async () => {
  work = await realpath(await mkdtemp(join(tmpdir(), 'benchleaf-book-')));
  await copyAssets(work);
  printer = await Printer.open({ workFolder: work });
});

afterAll(async () => {
  await printer.close();
  await rm(work, { recursive: true });
});

function bookOf(documents: readonly Document[]) {
  const book = documents.find(({ name }) => name === 'book.pdf');
  if (!book || !('paged' in book)) throw new Error('there is no book');
  return book.paged;
}

async function printed(more: Partial<Order> = {}): Promise<Printed> {
  const paged = bookOf(documentsOf(orderOf(LESSONS, BOOK, more)));
  const to = join(work, 'book.pdf');
  let html = '';
  let places: Places = new Map();
  let rounds = -1;
  await printer.print({
    to,
    html: (found) => {
      rounds += 1;
      places = found;
      html = paged(found);
      return html;
    },
  });
  return { ...(await lookAt(to)), html, places, rounds };
}

/** Letters alone: a line may end, or a page turn, within a word of several parts. */
const letters = (text: string): string =>
  text
    .normalize('NFKC')
    .replace(/[^\p{L}\p{N}]/gu, '')
    .toLowerCase();

const STYLES = [
  ['A4, plain, millimetres', { paper: 'a4', print: 'plain', units: 'mm' }],
  ['Letter, large, inches', { paper: 'letter', print: 'large', units: 'inch' }],
] as const;

describe.each(STYLES)('the course book, %s', (_, style) => {
  let book: Printed;
  beforeAll(async () => {
    book = await printed(style);
  });

  it('is one tagged document with an outline of its lessons and of what stands at the end', () => {
    expect(book.tagged).toBe(true);
    expect(book.title).toBe('The Larkfield timepiece: course book');
    const top = book.outline.filter((line) => !line.startsWith(' '));
    expect(top.map((line) => line.replace(/\s+/g, ' '))).toEqual([
      'The Larkfield timepiece',
      'Contents',
      '6 Blank and pinion sizes',
      '12 Over-travel, stacks and set-up lengths',
      '16 Simple indexing',
      'Glossary',
      'Symbols',
      'Sources',
      'Index of terms',
    ]);
    expect(book.outline.filter((line) => /^ +Problems \d+\.1 to/.test(line))).toHaveLength(3);
    expect(new Set(book.sizes).size).toBe(1);
  });

  it('settles in a few rounds, with no page number left open', () => {
    expect(book.rounds).toBeLessThanOrEqual(3);
    expect(book.html).not.toContain('>000<');
  });

  it('names the true page of every lesson, set of problems and list', () => {
    const contents = /<section class="leaf book-contents"[^]*?<\/section>/.exec(book.html)?.[0] ?? '';
    const lines = [
      ...contents.matchAll(/<a href="#([^"]+)"[^>]*>[^]*?class="name">([^<]*)<[^]*?class="folio">(\d+)</g),
    ];
    expect(lines).toHaveLength(3 * 2 + 4);
    for (const [, anchor = '', title = '', page = ''] of lines) {
      expect(book.places.get(anchor), title).toBe(Number(page));
      expect(letters(book.text[Number(page) - 1] ?? ''), title).toContain(
        letters(title.replaceAll('&#x27;', "'")),
      );
    }
  });

  it('names only pages on which the word stands', () => {
    const ends = /<section class="leaf book-glossary"[^]*$/.exec(book.html)?.[0] ?? '';
    const said = new Map(
      [...book.html.matchAll(/<span id="(term-\d+)">([^<]*)<\/span>/g)].map(([, id = '', word = '']) => [
        id,
        word,
      ]),
    );
    const links = [...ends.matchAll(/<a href="#(term-\d+)">(\d+)(?:–(\d+))?<\/a>/g)];
    expect(links.length).toBeGreaterThan(150);
    for (const [, anchor = '', first = ''] of links) {
      const [word = ''] = (said.get(anchor) ?? 'nowhere').split(/\s/);
      expect(book.places.get(anchor)).toBe(Number(first));
      expect(letters(book.text[Number(first) - 1] ?? ''), `${word} on ${first}`).toContain(letters(word));
    }
  });

  it('has book and lesson at the head of each page, and its number at the foot, but for the title', () => {
    const [title = '', ...rest] = book.text;
    expect(title).not.toMatch(/\b1$/);
    for (const [place, text] of rest.entries()) {
      expect(text).toContain('The Larkfield timepiece');
      expect(text).toMatch(new RegExp(`(?:^|\\D)${place + 2}(?:\\D|$)`));
    }
    const at = (anchor: string) => (book.places.get(anchor) ?? 0) - 1;
    expect(book.text[at('lesson-06-blank-and-pinion-sizes-problems')]).toMatch(/6\s+Blank and pinion sizes/);
    expect(book.text[at('book-glossary')]).toContain('Glossary');
  });

  it('leads every link to something', () => {
    const ids = [...book.html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const known = new Set(ids);
    for (const [, to = ''] of book.html.matchAll(/href="#([^"]+)"/g)) {
      expect(known).toContain(to);
      expect(book.places.has(to), to).toBe(true);
    }
  });

  it('leaves no heading alone at the foot of a page', () => {
    const headings = book.html.matchAll(/<h2(?: id="[^"]*")?>([^<]+)<\/h2>/g);
    for (const [, heading = ''] of headings)
      for (const text of book.text) {
        const body = text.replace(/\s*Harrow Lane[^\n]*[^]*$/, '');
        expect(body.trimEnd().endsWith(`\n${heading}`), heading).toBe(false);
      }
  });

  it('asks the problems of the class’s own sheet, and tells no answer', () => {
    const documents = planOf(orderOf(LESSONS, ['book', 'problems', 'key'], style)).documents;
    const sheet = textOf(htmlOf(documents.find(({ name }) => name === 'problems.pdf')));
    const asked = [...book.html.matchAll(/<div class="asked">\s*<p>([^]*?)<\/p>/g)].map(([, html = '']) =>
      textOf(html),
    );
    expect(asked.length).toBeGreaterThan(30);
    for (const ask of asked) expect(sheet).toContain(ask);
    expect(book.html).not.toMatch(/class="(?:slips|key-part|accepted)"/);
  });
});

describe('the key to the book', () => {
  const namesIn = (kinds: readonly Kind[], more: Partial<Order> = {}) =>
    documentsOf(orderOf(LESSONS, kinds, more)).map(({ name }) => name);

  it('is that of the problem sheet where there is one', () =>
    expect(namesIn(['book', 'handout', 'problems', 'key'])).toEqual([
      'book.pdf',
      'handout.pdf',
      'problems.pdf',
      'key.pdf',
      'key.json',
    ]));

  it('lies beside the book where there is none', () => {
    const documents = documentsOf(orderOf(LESSONS, BOOK));
    expect(documents.map(({ name }) => name)).toEqual(['book.pdf', 'book-key.pdf']);
    const [key] = documentsOf(orderOf(LESSONS, ['key']));
    expect(htmlOf(documents[1])).toBe(htmlOf(key));
  });

  it('lies beside the book, once, where each of a class has numbers of their own', () => {
    const names = namesIn(['book', 'problems', 'key'], { versions: 2 });
    expect(names.filter((name) => name.startsWith('book'))).toEqual(['book.pdf', 'book-key.pdf']);
    expect(names).toContain('keys/version-a.pdf');
  });
});

describe('a book of lessons that are no course', () => {
  it('is made only when it is asked for', () => {
    const names = (file: Partial<Order['course']>) => {
      const order = orderOf(LESSONS.slice(0, 1), printedKinds);
      return documentsOf({ ...order, course: { ...order.course, ...file } }).map(({ name }) => name);
    };
    expect(names({})).not.toContain('book.pdf');
    expect(names({ file: 'evening.yaml' })).toContain('book.pdf');
  });

  const LESSON = 'lessons/06-blank-and-pinion-sizes/lesson.md';

  it('is refused where two have one folder’s name, since pages are found by it', () => {
    const order = orderOf([], BOOK);
    const twice = { ...order, course: { ...order.course, lessons: [LESSON, LESSON] } };
    expect(() => planOf(twice)).toThrow('in a folder called 06-blank-and-pinion-sizes as well');
  });
});
