import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { CommandError } from '../../src/diagnostics/errors.js';
import type { Key } from '../../src/exchange/key-schema.js';
import { printedKinds } from '../../src/pack/kinds.js';
import { cpuTime } from '../cpu-time.js';
import { dataOf, documentsOf, htmlOf, orderOf } from './class-order.js';
import { tablesOf, textOf } from './class-page.js';

const LESSONS = ['06-blank-and-pinion-sizes'];
const folder = mkdtempSync(join(tmpdir(), 'benchleaf-class-versions-'));
const list = join(folder, 'class.csv');
afterAll(() => rmSync(folder, { recursive: true }));

const keysIn = (documents: ReturnType<typeof documentsOf>): readonly Key[] =>
  documents.filter(({ name }) => name.endsWith('.json')).map((one) => JSON.parse(dataOf(one)) as Key);
const namesIn = (documents: ReturnType<typeof documentsOf>): string[] => documents.map(({ name }) => name);

describe('two versions', () => {
  const documents = documentsOf(orderOf(LESSONS, ['problems', 'key', 'grid', 'marks'], { versions: 2 }));

  it('are two sheets, each with its key, and what to mark them from', () =>
    expect(namesIn(documents)).toEqual([
      'problems/version-a.pdf',
      'keys/version-a.pdf',
      'keys/version-a.json',
      'problems/version-b.pdf',
      'keys/version-b.pdf',
      'keys/version-b.json',
      'class-grid.pdf',
      'mark-sheet.pdf',
      'mark-sheet.csv',
    ]));

  it('say which they are, on the sheet, its foot and its key', () => {
    for (const [place, version] of ['A', 'B'].entries()) {
      const [sheet = '', key = ''] = documents.slice(3 * place, 3 * place + 2).map(htmlOf);
      expect(textOf(/<p class="name-line">[^]*?<\/p>/.exec(sheet)?.[0] ?? '')).toContain(
        `Version ${version}`,
      );
      expect(sheet).toContain(`"Version ${version} · Variant `);
      expect(textOf(key)).toContain(`Version ${version}, variant `);
    }
  });

  it('share no answer in figures', () => {
    const [a = [], b = []] = keysIn(documents).map(({ lessons }) =>
      lessons.flatMap(({ problems }) => problems.flatMap(({ parts }) => parts)),
    );
    expect(a.length).toBeGreaterThan(8);
    let figures = 0;
    for (const [place, { expects, answer }] of a.entries()) {
      if (expects.kind !== 'number') continue;
      figures++;
      expect(b[place]?.answer).not.toBe(answer);
    }
    expect(figures).toBeGreaterThan(5);
  });

  it('have a line each on the grid, and a mark sheet with lines to write names on', () => {
    const html = (name: string) => htmlOf(documents.find((one) => one.name === name));
    expect(tablesOf(html('class-grid.pdf'))[0]?.tables[0]?.rows.map((row) => row.slice(0, 3))).toEqual([
      ['1', 'A', ''],
      ['2', 'B', ''],
    ]);
    const [marks] = tablesOf(html('mark-sheet.pdf'))[0]?.tables ?? [];
    expect(marks?.rows.map((row) => row.join(''))).toEqual(Array(12).fill(''));
  });
});

describe('two versions of a class', () => {
  writeFileSync(list, 'name,seat,units\nDora,4,\nAda,1,\nCy,3,inch\nBen,2,\n');
  const documents = documentsOf(
    orderOf(LESSONS, ['problems', 'key', 'grid', 'marks'], { versions: 2, learners: list }),
  );

  it('take turns along the seats, with a key for each and for other units', () => {
    const sheets = documents.filter(({ kind }) => kind === 'problems');
    const [a, b] = [sheets[0]?.variant, sheets[1]?.variant];
    expect(sheets.map(({ learner, variant }) => [learner, variant])).toEqual([
      ['Ada', a],
      ['Ben', b],
      ['Cy', `${a}-inch`],
      ['Dora', b],
    ]);
    expect(new Set(namesIn(documents).filter((name) => name.startsWith('keys/')))).toEqual(
      new Set(
        ['version-a', 'version-a-inch', 'version-b'].flatMap((key) => [
          `keys/${key}.pdf`,
          `keys/${key}.json`,
        ]),
      ),
    );
    for (const { variant, learner } of keysIn(documents)) {
      expect(learner).toBeUndefined();
      expect(sheets.map((sheet) => sheet.variant)).toContain(variant);
    }
  });

  it('stand beside the names on the grid', () => {
    const grid = htmlOf(documents.find(({ kind }) => kind === 'grid'));
    expect(tablesOf(grid)[0]?.tables[0]?.rows.map((row) => row.slice(1, 4).join(' '))).toEqual([
      '1 A Ada',
      '2 B Ben',
      '3 A Cy',
      '4 B Dora',
    ]);
  });
});

describe('sheets of a class, and no class', () => {
  it.each([['grid'], ['marks']] as const)('says in one line that --only %s needs a list', (kind) => {
    const attempt = () => documentsOf(orderOf(LESSONS, ['key', kind]));
    expect(attempt).toThrow(CommandError);
    expect(attempt).toThrow(`--only ${kind} needs a class: name its list with --learners`);
  });

  it('are left out where no kinds were named', () =>
    expect(namesIn(documentsOf(orderOf(LESSONS, printedKinds)))).toEqual([
      'handout.pdf',
      'problems.pdf',
      'key.pdf',
      'key.json',
    ]));
});

describe('ten thousand learners', () => {
  it('are planned in little room and time, and nothing is drawn', () => {
    writeFileSync(
      list,
      `name,seat,print,units\n${Array.from({ length: 10_000 }, (_, n) => `Ada Brown,${n},large,mm\n`).join('')}`,
    );
    const before = process.memoryUsage().heapUsed;
    const started = cpuTime();
    const documents = documentsOf(orderOf(LESSONS, ['problems', 'key', 'grid', 'marks'], { learners: list }));
    expect(documents).toHaveLength(30_003);
    expect(new Set(documents.map(({ name }) => name)).size).toBe(30_003);
    expect(cpuTime() - started).toBeLessThan(15_000);
    expect(process.memoryUsage().heapUsed - before).toBeLessThan(256 << 20);
  });
});
