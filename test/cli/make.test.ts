import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Made } from '../../src/pack/make.js';
import { lookAt } from '../print/fingerprint.js';
import { benchleaf } from './benchleaf.js';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'benchleaf-make-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function made(...words: string[]): Promise<Made> {
  const { code, out, err } = await benchleaf('make', '--quiet', '--json', ...words);
  expect([code, err]).toEqual([0, '']);
  return JSON.parse(out) as Made;
}

/** The sample course with a few of its lessons. */
function shortCourse(name: string, lessons: readonly string[], change = (text: string) => text): string {
  const sample = readFileSync('lessons/courses/larkfield.yaml', 'utf8')
    .replace('../kits/', `${process.cwd()}/lessons/kits/`)
    .replace(/(?<=^lessons:\n)(?: {2}- .+\n)+/m, lessons.map((lesson) => `  - ${lesson}\n`).join(''));
  const file = join(folder, `${name}.yaml`);
  writeFileSync(file, change(sample));
  return file;
}

const textOf = async (file: string) => (await lookAt(file)).text.join('\n').replaceAll('\u202F', ' ');

describe('the sample pack', () => {
  it('has five documents with the class wheel in them, whole, and the key as data', async () => {
    const out = join(folder, 'sample');
    const { documents } = await made('--out', out);
    expect(documents.map(({ file }) => file.slice(out.length + 1)).sort()).toEqual([
      'larkfield/book.pdf',
      'larkfield/card-class-wheel.pdf',
      'larkfield/handout.pdf',
      'larkfield/key.json',
      'larkfield/key.pdf',
      'larkfield/problems.pdf',
    ]);
    expect(readdirSync(join(out, 'larkfield'))).toHaveLength(7); // a packing list, and nothing else
    const at = (kind: string) => documents.find((one) => one.kind === kind)?.file ?? '';
    const [handout, card] = [await lookAt(at('handout')), await textOf(at('cards'))];
    expect(handout).toMatchObject({ tagged: true, language: 'en-GB' });
    expect(handout.outline).toEqual(
      expect.arrayContaining([
        expect.stringContaining('Blank and pinion sizes'),
        expect.stringContaining('Depth of cut and cutter choice'),
        expect.stringContaining('Over-travel, stacks and set-up lengths'),
        expect.stringContaining('Simple indexing'),
      ]),
    );
    // 0.8 × (60 + 2.76), 2.95 × 0.8, and 9.5 + 2 × 7.146 + 2, from the trade's own rules.
    for (const number of ['50.21', '2.36', '25.8']) expect(card).toContain(number);
    expect(await textOf(at('key'))).toMatch(/accept \d+\.\d+ mm to \d+\.\d+ mm/);
  });

  it('is on Letter, in inches and large print for another workshop', async () => {
    const { documents } = await made(
      shortCourse('short', ['04-trains-and-beats', '06-blank-and-pinion-sizes', '12-over-travel-and-stacks']),
      ...['--out', join(folder, 'large'), '--paper', 'letter', '--units', 'inch', '--print', 'large'],
      ...['--kit', 'lessons/kits/mill-yard.yaml'],
    );
    for (const { file, kind } of documents.filter((one) => one.kind !== 'cards' && one.pages > 0)) {
      const { sizes, text } = await lookAt(file);
      expect(new Set(sizes)).toEqual(new Set(['215.9 × 279.4']));
      expect(text.join(), kind).toMatch(/\d\sin\b/);
    }
  });
});

describe('variants', () => {
  const lesson = ['16-simple-indexing', '--only', 'problems,key'];

  it('print the same numbers for the same code, and others for another', async () => {
    const [one, again, other] = [
      await made(...lesson, '--out', join(folder, 'a'), '--variant', '7KQ-2M4-X'),
      await made(...lesson, '--out', join(folder, 'b'), '--variant', '7kq2m4x'),
      await made(...lesson, '--out', join(folder, 'c')),
    ].map(({ documents }) => documents.filter(({ pages }) => pages > 0).map(({ file }) => file));
    for (const [place, file] of (one ?? []).entries()) {
      const text = await textOf(file);
      expect(text).toContain('7KQ-2M4-X');
      expect(await textOf(again?.[place] ?? '')).toBe(text);
      expect(await textOf(other?.[place] ?? '')).not.toBe(text);
    }
  });

  it('are fresh when new ones are asked for', async () => {
    const [one, two] = [
      await made(...lesson, '--out', join(folder, 'f'), '--variant', 'new'),
      await made(...lesson, '--out', join(folder, 'f'), '--variant', 'new'),
    ];
    expect(one?.variant).not.toBe(two?.variant);
  });

  it('give every learner a sheet, a key and a code, and the code prints the sheet again', async () => {
    const list = join(folder, 'class.csv');
    writeFileSync(list, 'name\nÅsa Ökten\nBen O’Neill\nBen O’Neill\n"=1+1"\n');
    const { documents } = await made(...lesson, '--out', join(folder, 'd'), '--learners', list);
    const sheets = documents.filter(({ kind }) => kind === 'problems');
    expect(sheets.map(({ learner }) => learner)).toEqual(['Åsa Ökten', 'Ben O’Neill', 'Ben O’Neill', '=1+1']);
    expect(new Set(sheets.map(({ variant }) => variant)).size).toBe(4);
    const [first] = sheets;
    const { documents: again } = await made(
      ...lesson,
      '--out',
      join(folder, 'e'),
      '--variant',
      first?.variant ?? '',
    );
    const plain = (text: string) => text.replaceAll('Åsa Ökten', '').replace(/[\s·]+/g, ' ');
    const reprint = again.find(({ kind }) => kind === 'problems')?.file ?? '';
    expect(plain(await textOf(first?.file ?? ''))).toContain(plain(await textOf(reprint)).slice(0, 200));
  });
});

describe('what is wrong stops everything, tells its place, and leaves nothing', () => {
  const good = readFileSync('test/lesson/held/08-centre-distance.md', 'utf8');
  const attempt = async (name: string, text: string, ...more: string[]) => {
    const lesson = join(folder, name);
    mkdirSync(lesson, { recursive: true });
    writeFileSync(join(lesson, 'lesson.md'), text);
    const out = join(folder, 'none');
    const result = await benchleaf('make', lesson, '--quiet', '--out', out, ...more);
    expect(existsSync(out)).toBe(false);
    return result;
  };

  it.each([
    ['bad TeX', ['roll on one another …', 'are $\\frac{1$'], /lesson\.md:21:\d+: error\[sheet\/tex\]/],
    [
      'an unknown TeX command',
      ['roll on one another …', 'are $\\wheel$'],
      /lesson\.md:21:\d+: error\[sheet\/tex\]/,
    ],
    [
      'a figure that does not fit',
      [
        '{{figure "pitch-circles" teeth=teeth leaves=leaves module=module}}',
        '{{figure "check-bar" length=400}}',
      ],
      /lesson\.md:25:1: error\[\w+\/figure\].+\n.+\n.+\n {2}hint: /,
    ],
    [
      'a range with no solution',
      ['>= 5', '>= 50'],
      /lesson\.md:14:\d+: error\[lesson\/problem\/no-solution\]/,
    ],
    ['an unknown name', ['{{leaves}}', '{{leavs}}'], /lesson\.md:16:58: error\[lesson\/name\]/],
  ] as const)('%s', async (name, [from, to], message) => {
    expect(good).toContain(from);
    const { code, err } = await attempt(name.replaceAll(' ', '-'), good.replace(from, to));
    expect(err).toMatch(message);
    expect(code).toBe(1);
  });

  it('a kit with a missing plate, a list in a strange encoding, and a faulty lesson, all at once', async () => {
    const kit = join(folder, 'kit.yaml');
    writeFileSync(kit, 'kit: Ours\nunits: mm\nheads:\n  - name: H\n    ratio: 40\n');
    const list = join(folder, 'strange.csv');
    writeFileSync(list, Buffer.from('name\nJos\xe9\n', 'latin1'));
    const { code, err } = await attempt('fine', good, '--kit', kit, '--learners', list);
    expect(code).toBe(1);
    expect(err).toMatch(/kit\.yaml:\d+:\d+: error\[kit\/value\]/);
    expect(err).toMatch(/strange\.csv:2:4: error\[learners\/encoding\].+\n(.*\n)*? {2}hint: .*UTF-8/);
  });

  it('a job that the kit cannot cut, at its course; a lesson alone has no cards', async () => {
    const course = shortCourse('course', ['16-simple-indexing'], (text) =>
      text.replace('blankThickness: 2', 'blankThickness: 99'),
    );
    for (const command of ['make', 'check']) {
      const { code, err } = await benchleaf(
        command,
        course,
        ...(command === 'make' ? ['--quiet', '--out', folder] : []),
      );
      expect([code, err]).toEqual([
        1,
        expect.stringMatching(/course\.yaml:\d+:\d+: error\[course\/job\] the job "Class wheel"/),
      ]);
    }
    const { code, err } = await benchleaf(
      'make',
      '16-simple-indexing',
      '--only',
      'cards',
      '--quiet',
      '--out',
      folder,
    );
    expect([code, err]).toEqual([2, expect.stringMatching(/nothing to make.+cards need a course/)]);
    expect((await benchleaf('make', '--out', '', '--quiet')).code).toBe(2);
  });

  it('a folder that cannot be: exit 3', async () => {
    const file = join(folder, 'a-file');
    writeFileSync(file, '');
    const { code, err } = await benchleaf('make', '--quiet', '--out', join(file, 'out'));
    expect([code, err]).toEqual([3, expect.stringMatching(/cannot write into the folder .+--out\.\n$/)]);
  });

  it.each([
    [['make', '--variant', '123']],
    [['make', '--only', 'handouts']],
    [['make', '--shard', '0/8']],
    [['make', '--shard', '9/8']],
    [['make', '--shard', '1/1001']],
    [['make', '--shard', '3']],
    [['make', '--shard', '3/8', '--variant', 'new']],
    [['make', '--paper', 'a5']],
    [['make', 'nosuch']],
    [['make', 'nosuch.yaml']],
    [['make', '--kit', 'nosuch.yaml', '--quiet', '--out', 'none-such']],
    [['make', '--learners', 'nosuch.csv', '--quiet', '--out', 'none-such']],
  ])('%j is a wrong command: exit 2', async (words) => {
    const { code, out, err } = await benchleaf(...words);
    expect([code, out]).toEqual([2, '']);
    expect(err.length).toBeGreaterThan(10);
    expect(existsSync('none-such')).toBe(false);
  });
});
