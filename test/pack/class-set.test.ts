import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Key } from '../../src/exchange/key-schema.js';
import type { Document } from '../../src/pack/plan.js';
import { AWKWARD, dataOf, documentsOf, htmlOf, orderOf, writeClass } from './class-order.js';
import { tablesOf, textOf } from './class-page.js';
import { runsRightToLeft } from './right-to-left.js';

const LESSONS = ['06-blank-and-pinion-sizes', '16-simple-indexing'];
const folder = mkdtempSync(join(tmpdir(), 'benchleaf-class-set-'));
const list = join(folder, 'class.csv');
afterAll(() => rmSync(folder, { recursive: true }));

/** The class in the order they sit: the list tells seats from the last to the first. */
const seated = [...AWKWARD].reverse();
let documents: readonly Document[];
let keys: readonly Key[];
const find = (name: string, among = documents) => among.find((one) => one.name === name);

beforeAll(() => {
  writeClass(list, AWKWARD);
  const order = orderOf(LESSONS, ['problems', 'key', 'grid', 'marks'], { learners: list });
  documents = documentsOf(order);
  keys = documents
    .filter(({ name }) => /^keys\/.*\.json$/.test(name))
    .map((one) => JSON.parse(dataOf(one)) as Key);
});

const spaceless = (text: string): string => text.replace(/\s/g, '');

/** Every number in a text, in order. */
const numbersIn = (text: string): string[] => text.match(/\d+(\.\d+)?/g) ?? [];

describe('a class of thirty with awkward names', () => {
  it('has a sheet and a key for each, in the order they sit', () => {
    expect(AWKWARD).toHaveLength(30);
    const sheets = documents.filter(({ kind }) => kind === 'problems');
    expect(sheets.map(({ learner }) => learner)).toEqual(seated);
    expect(keys.map(({ learner }) => learner)).toEqual(seated);
    expect(new Set(sheets.map(({ variant }) => variant)).size).toBe(30);
  });

  it('has files whose names are safe, and no two alike on a disk that knows no capitals', () => {
    const names = documents.map(({ name }) => name);
    for (const name of names)
      expect(name).toMatch(
        /^(?:(?:problems|keys)\/\d\d(?:-[\p{L}\p{M}\p{N}]+)*|class-grid|mark-sheet)\.(?:pdf|json|csv)$/u,
      );
    expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(names.length);
  });

  it('is printed for each in their own size and units', () => {
    for (const [place, name] of seated.entries()) {
      const inList = AWKWARD.length - 1 - place;
      const mine = documents.filter(({ kind, learner }) => kind === 'problems' && learner === name);
      const large = inList % 3 === 2;
      expect(
        mine.some((one) => htmlOf(one).includes(`class="problems ${large ? 'large' : 'plain'} a4"`)),
      ).toBe(true);
      expect(keys[place]?.units).toBe(inList % 4 === 3 ? 'inch' : 'mm');
    }
  });

  it('puts a name on the page as text, whatever is in it', () => {
    const page = htmlOf(
      documents.find(({ kind, learner }) => kind === 'problems' && learner === '<b>Bold</b> & Co.'),
    );
    expect(page).not.toContain('<b>Bold');
    expect(textOf(/<p class="name-line">[^]*?<\/p>/.exec(page)?.[0] ?? '')).toContain('<b>Bold</b> & Co.');
  });

  it('lets no name turn round what stands beside it', () => {
    const pages = documents.filter((one) => 'html' in one);
    const turned = pages.filter(({ learner = '' }) => runsRightToLeft(learner));
    expect(turned).toHaveLength(4 * 2);
    for (const page of [...turned, find('class-grid.pdf'), find('mark-sheet.pdf')]) {
      const html = htmlOf(page);
      expect(runsRightToLeft(html)).toBe(true);
      const apart = html.replace(/<bdi>[^<]*<\/bdi>|\\2068 [^"]*\\2069 /g, '');
      expect(runsRightToLeft(apart)).toBe(false);
      expect(html).not.toMatch(/\p{Bidi_Control}/u);
    }
  });
});

describe('the grid of a class', () => {
  it('has every answer of every learner as their key has it', () => {
    const lessons = tablesOf(htmlOf(find('class-grid.pdf')));
    expect(lessons).toHaveLength(LESSONS.length);
    let compared = 0;
    for (const [at, { tables }] of lessons.entries())
      for (const { heads, rows } of tables) {
        expect(rows).toHaveLength(30);
        for (const [place, row] of rows.entries()) {
          expect(row.slice(0, 3)).toEqual([String(place + 1), String(place + 1), seated[place]]);
          for (const [column, head] of heads.entries()) {
            if (column < 3) continue;
            const [number = ''] = textOf(head.replace(/<span class="note">/g, '|<span>')).split('|');
            const [of = '', letter = ''] = number.trim().split(' ');
            const [commonest = ''] = [...head.matchAll(/class="note">([^<]*)/g)].map(([, note = '']) => note);
            const problem = keys[place]?.lessons[at]?.problems.find((one) => one.number === of);
            const part = problem?.parts.find((one) => one.letter === letter);
            if (!part) throw new Error(`the key of ${seated[place]} has no ${number}`);
            const [cell = ''] = (row[column] ?? '').split(' ±');
            compared++;
            if (part.expects.kind === 'moves') {
              expect(numbersIn(cell)).toEqual(numbersIn(part.answer));
              continue;
            }
            // The unit that most of the class has stands at the head; any other beside the answer.
            const unit = cell.endsWith(part.unit) ? '' : commonest.split(' ±')[0];
            expect(spaceless(`${cell}${part.unit && unit}`)).toBe(spaceless(part.answer));
          }
        }
      }
    const answers = keys.flatMap(({ lessons: all }) =>
      all.flatMap(({ problems }) => problems.flatMap(({ parts }) => parts)),
    );
    expect(compared).toBe(answers.length);
  });
});

describe('the mark sheet of a class', () => {
  const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);
  const marksOf = (key: Key | undefined, at: number) =>
    sum((key?.lessons[at]?.problems ?? []).map(({ marks }) => marks));
  const csv = () => parse(dataOf(find('mark-sheet.csv')), { bom: true }) as readonly (readonly string[])[];

  it('has the marks of the sheets, problem by problem and in all, twelve learners to a page', () => {
    const lessons = tablesOf(htmlOf(find('mark-sheet.pdf')));
    expect(lessons.map(({ lesson }) => lesson)).toEqual([
      ...LESSONS.map((name) => `lesson-${name}`),
      'totals',
    ]);
    for (const [at, { tables }] of lessons.slice(0, -1).entries()) {
      for (const { rows } of tables) expect(rows).toHaveLength(12);
      const bands = tables.length / 3;
      expect(Number.isInteger(bands)).toBe(true);
      const boxes = tables.slice(0, bands).flatMap(({ heads }) =>
        heads.map(textOf).flatMap((head) => {
          const [, letter = '', possible = ''] = /^(M|A|B|ft) (\d+)$/.exec(head) ?? [];
          return letter === '' ? [] : [{ letter, possible: Number(possible) }];
        }),
      );
      const given = sum(boxes.filter(({ letter }) => letter !== 'ft').map(({ possible }) => possible));
      const total = Number(textOf(tables[bands - 1]?.heads.at(-1) ?? ''));
      for (const key of keys)
        expect({ given, total }).toEqual({ given: marksOf(key, at), total: marksOf(key, at) });
    }
    const names = lessons[0]?.tables
      .filter((_, n, all) => n % (all.length / 3) === 0)
      .flatMap(({ rows }) => rows.map((row) => row[2] ?? ''));
    expect(names?.filter((name) => name !== '')).toEqual(seated);
  });

  it('tells the variant of each, from which a lost sheet is printed again', () => {
    const totals =
      tablesOf(htmlOf(find('mark-sheet.pdf')))
        .at(-1)
        ?.tables.flatMap(({ rows }) => rows) ?? [];
    expect(totals.map((row) => row[3]).filter(Boolean)).toEqual(keys.map(({ variant }) => variant));
  });

  it('is the same for a spreadsheet, with the same columns and marks', () => {
    const [heads = [], ...rows] = csv();
    expect(rows).toHaveLength(30);
    for (const row of rows) expect(row).toHaveLength(heads.length);
    for (const [at, number] of ['6', '16'].entries()) {
      const of = (pattern: RegExp) => heads.flatMap((head) => Number(pattern.exec(head)?.[1] ?? 0));
      expect(sum(of(new RegExp(`^${number}\\.\\d+ [MAB] \\((\\d+)\\)$`)))).toBe(marksOf(keys[0], at));
      expect(sum(of(new RegExp(`^${number} total \\((\\d+)\\)$`)))).toBe(marksOf(keys[0], at));
    }
    expect(heads.at(-1)).toBe(`total (${marksOf(keys[0], 0) + marksOf(keys[0], 1)})`);
    expect(rows.map((row) => row[4])).toEqual(keys.map(({ variant }) => variant));
  });

  it('lets a spreadsheet read accents, and work nothing out', () => {
    const text = dataOf(find('mark-sheet.csv'));
    expect(text.startsWith('\uFEFF')).toBe(true);
    expect(text.split('\r\n')).toHaveLength(32);
    const names = csv()
      .slice(1)
      .map((row) => row[2] ?? '');
    expect(names.map((name) => name.replace(/^'(?=[=+\-@])/, ''))).toEqual(seated);
    for (const cell of csv().flat()) expect(cell).not.toMatch(/^\s*[=+\-@\t\r]/);
    expect(names).toContain("'=1+1");
  });
});

describe('a lost sheet', () => {
  it('of learner 17 and its key print again from the variant alone, the name excepted', () => {
    const lost = keys[16];
    if (!lost) throw new Error('there is no learner 17');
    const kinds = ['problems', 'key'] as const;
    const again = documentsOf(orderOf(LESSONS, kinds, { variant: lost.variant.toLowerCase() }));
    const { learner, ...numbers } = lost;
    expect(learner).toBe(seated[16]);
    expect(JSON.parse(dataOf(find('key.json', again)))).toEqual(numbers);
    const nameless = (html: string) =>
      html.replaceAll(/<bdi>[^<]*<\/bdi>/g, '').replace(/@page \{ @top-right[^]*?\n/, '');
    const original = documents.find(({ name }) => name.startsWith('problems/17-'));
    const print = htmlOf(original).includes('class="problems large') ? 'large' : 'plain';
    const [sheet] = documentsOf(orderOf(LESSONS, kinds, { variant: lost.variant, print }));
    expect(nameless(htmlOf(sheet))).toBe(nameless(htmlOf(original)));
  });

  it('in inches says so beside its code, and prints again in inches', () => {
    const inches = keys.filter(({ units }) => units === 'inch');
    expect(inches).toHaveLength(7);
    for (const { variant, units, lessons } of inches.slice(0, 3)) {
      expect(variant).toMatch(/-inch$/);
      const again = JSON.parse(
        dataOf(find('key.json', documentsOf(orderOf(LESSONS, ['key'], { variant })))),
      ) as Key;
      expect({ units: again.units, lessons: again.lessons }).toEqual({ units, lessons });
    }
  });

  it('cannot be in two units', () =>
    expect(() =>
      documentsOf(
        orderOf(LESSONS, ['key'], {
          variant: keys.find(({ units }) => units === 'inch')?.variant ?? '',
          units: 'mm',
        }),
      ),
    ).toThrow(/is not in the units mm/));
});
