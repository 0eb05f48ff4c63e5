import { execFileSync } from 'node:child_process';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { packingListText } from '../../src/pack/packing-list.js';
import { type PackingList, packingListJsonSchema } from '../../src/pack/packing-list-schema.js';
import { filesIn } from '../../src/pack/set-files.js';
import { verify } from '../../src/pack/verify.js';
import { benchleaf } from '../cli/benchleaf.js';

const LESSON = '16-simple-indexing';
const SHARDS = 3;

let root: string;
let learners: string;
let sets: string;
/** A copy of the set, for each test. */
let folder: string;

/** Makes packages for a class, which need no browser. */
async function make(out: string, ...more: string[]): Promise<void> {
  const words = [
    'make',
    LESSON,
    '--learners',
    learners,
    '--only',
    'qti',
    '--quiet',
    '--out',
    join(root, out),
  ];
  expect(await benchleaf(...words, ...more)).toMatchObject({ code: 0, err: '' });
}

beforeAll(async () => {
  root = mkdtempSync(join(tmpdir(), 'benchleaf-verify-'));
  learners = join(root, 'class.csv');
  writeFileSync(learners, ['name', ...'ABCDEFG'].join('\n'));
  for (let shard = 1; shard <= SHARDS; shard++) await make('parts', '--shard', `${shard}/${SHARDS}`);
  sets = join(root, 'parts', LESSON);
});
afterAll(() => rmSync(root, { recursive: true }));
beforeEach(() => {
  folder = join(root, 'copy');
  rmSync(folder, { recursive: true, force: true });
  cpSync(sets, folder, { recursive: true });
});

const found = async () => (await verify(folder)).findings.map(({ what, file, says }) => [what, file, says]);
const list = (number: number, of = SHARDS) => `packing-list-${number}-of-${of}.json`;
const read = (name: string): PackingList => JSON.parse(readFileSync(join(folder, name), 'utf8'));
const write = (name: string, data: PackingList) => writeFileSync(join(folder, name), packingListText(data));

describe('verify', () => {
  it('finds a set whole, in parts and made in one', async () => {
    expect(await verify(folder)).toEqual({ folder, whole: true, shards: 3, documents: 7, findings: [] });
    await make('one');
    const one = join(root, 'one', LESSON);
    expect(await verify(one)).toMatchObject({ whole: true, shards: 1, documents: 7 });
    for (const { name } of read(list(2)).documents)
      expect(readFileSync(join(one, name))).toEqual(readFileSync(join(folder, name)));
    const { code, out } = await benchleaf('verify', folder);
    expect([code, out]).toEqual([0, `${folder}: 7 documents in 3 parts, complete and unaltered\n`]);
  });

  it.each([2, 9])('finds the same files in %i parts, though some have none', async (of) => {
    const out = `parts-${of}`;
    for (let shard = 1; shard <= of; shard++) await make(out, '--shard', `${shard}/${of}`);
    const parts = join(root, out, LESSON);
    expect(await verify(parts)).toMatchObject({ whole: true, shards: of, documents: 7 });
    const documents = filesIn(parts).filter((name) => !name.startsWith('packing-list'));
    expect(documents).toEqual(filesIn(sets).filter((name) => !name.startsWith('packing-list')));
    for (const name of documents)
      expect(readFileSync(join(parts, name))).toEqual(readFileSync(join(sets, name)));
    // A run of the whole makes the lists of parts useless, and takes them away.
    await make(out);
    expect(filesIn(parts)).toEqual([list(1, 1), ...documents].sort());
    expect(await verify(parts)).toMatchObject({ whole: true, shards: 1, documents: 7 });
  });

  it('tells what is missing, altered or too much, in plain lines and as data', async () => {
    const [a = '', b = '', c = '', d = ''] = [1, 2, 3].flatMap((one) =>
      read(list(one)).documents.map(({ name }) => name),
    );
    rmSync(join(folder, a));
    const bytes = readFileSync(join(folder, b));
    bytes[40] = (bytes[40] ?? 0) ^ 1;
    writeFileSync(join(folder, b), bytes);
    truncateSync(join(folder, c), 10);
    renameSync(join(folder, d), join(root, 'elsewhere'));
    symlinkSync(join(root, 'elsewhere'), join(folder, d));
    writeFileSync(join(folder, 'notes.txt'), 'mine');
    writeFileSync(join(folder, '.DS_Store'), '');
    expect(await found()).toEqual([
      ['missing', a, 'is missing'],
      ['altered', b, 'was altered'],
      ['altered', c, expect.stringMatching(/^was altered: it has 10 bytes, and had \d+$/)],
      ['altered', d, 'is a link that leads elsewhere'],
      ['extra', 'notes.txt', expect.stringContaining('not of this set')],
    ]);
    const { code, out, err } = await benchleaf('verify', folder);
    expect([code, err]).toEqual([1, `benchleaf: ${folder} does not hold a whole set, unaltered\n`]);
    expect(out.split('\n')[0]).toBe(`${a} is missing`);
    const data = await benchleaf('verify', '--json', folder);
    expect([data.code, JSON.parse(data.out)]).toEqual([1, await verify(folder)]);
  });

  it('names the shard that is missing, and how to make it', async () => {
    for (const { name } of read(list(2)).documents) rmSync(join(folder, name));
    rmSync(join(folder, list(2)));
    expect(await found()).toEqual([
      ['shard-missing', list(2), 'is missing: make part 2 of 3 with --shard 2/3'],
    ]);
  });

  it('tells shards that were made from something else, and whose a file is', async () => {
    const before = readFileSync(learners, 'utf8');
    writeFileSync(learners, `${before}\nH`);
    await make('others', '--shard', '2/3', '--units', 'inch');
    writeFileSync(learners, before);
    const others = join(root, 'others', LESSON);
    cpSync(others, folder, { recursive: true });
    const [first] = read(list(2)).documents;
    const told = await found();
    expect(told.slice(0, 2)).toEqual([
      ['shard-missing', list(2), expect.anything()],
      [
        'other-inputs',
        list(2),
        `was made otherwise than ${list(1)}: from another state of the learners class.csv, with units inch, not as it comes`,
      ],
    ]);
    expect(told).toContainEqual(['extra', first?.name, `is of another set, that of ${list(2)}`]);
  });

  it('says so where there is no list, where a run was cut short, and where a course’s folder was meant', async () => {
    const parent = await verify(join(root, 'parts'));
    expect(parent.findings[0]?.says).toContain(`look into ${sets}`);
    for (let shard = 1; shard <= SHARDS; shard++) rmSync(join(folder, list(shard)));
    expect(await found()).toEqual([['no-list', list(1, 1), expect.stringContaining('no set was made here')]]);
    mkdirSync(join(folder, '.benchleaf-making-x'));
    expect(await found()).toEqual([
      ['no-list', list(1, 1), expect.stringContaining('make the documents again')],
    ]);
    expect((await benchleaf('verify', join(folder, 'none'))).code).toBe(2);
  });
});

describe('a packing list that is bad is refused, and the place told:', () => {
  const edited = (edit: (text: string) => string) => {
    const file = join(folder, list(1));
    writeFileSync(file, edit(readFileSync(file, 'utf8')));
  };
  const lineOf = (piece: string) => {
    const lines = readFileSync(join(folder, list(1)), 'utf8').split('\n');
    const at = lines.findIndex((line) => line.includes(piece));
    return `${list(1)}:${at + 1}:${(lines[at] ?? '').indexOf(piece) + 1}: error[packing-list/`;
  };
  const refused = async (message: string) => {
    const { code, out, err } = await benchleaf('verify', folder);
    expect([code, out, err]).toEqual([1, '', expect.stringContaining(message)]);
  };

  it.each([
    ['one that is no JSON', 'json', (text: string) => text.replace('"shard":', '"shard" oh'), 'oh'],
    ['one that was cut short', 'json', (text: string) => text.slice(0, -20), undefined],
    [
      'a name that climbs',
      'value',
      (text: string) => text.replace('"qti/01', '"../../qti/01'),
      '"../../qti/01',
    ],
    ['a name from the root', 'value', (text: string) => text.replace('"qti/01', '"/qti/01'), '"/qti/01'],
    ['a name of a drive', 'value', (text: string) => text.replace('"qti/01', '"C:qti/01'), '"C:qti/01'],
    ['a hidden name', 'value', (text: string) => text.replace('"qti/01', '".qti/01'), '".qti/01'],
    ['a backslash', 'value', (text: string) => text.replace('"qti/01', '"qti\\\\01'), '"qti\\\\01'],
    ['a size below nought', 'value', (text: string) => text.replace(/"size":\d+/, '"size":-1'), ':-1'],
    ['no SHA-256', 'value', (text: string) => text.replace(/("sha256": )"\w+"/, '$1"beef"'), '"beef"'],
    ['an unknown name', 'value', (text: string) => text.replace('"shard":', '"more": [1], "shard":'), '[1]'],
    [
      'one that is __proto__',
      'value',
      (text: string) => text.replace('"shard":', '"__proto__": 7, "shard":'),
      '7,',
    ],
    ['a shard of none', 'value', (text: string) => text.replace('"of": 3', '"of": -3'), '-3'],
    ['another number', 'name', (text: string) => text.replace('"number": 1', '"number": 2'), undefined],
    ['another size', 'seal', (text: string) => text.replace(/"size":\d+/, '"size":12'), '"seal"'],
    ['another list of learners', 'seal', (text: string) => text.replace('class.csv', 'ours.csv'), '"seal"'],
  ])('%s', async (_, rule, edit, piece) => {
    edited(edit);
    const where = piece === undefined ? `${list(1)}:` : lineOf(piece).replace(/:\d+: error.*/, ':');
    await refused(where);
    await refused(`error[packing-list/${rule}]`);
  });

  it('one with a document twice', async () => {
    const data = read(list(1));
    write(list(1), { ...data, documents: [...data.documents, ...data.documents] });
    await refused('is there twice');
  });

  it('one that is huge, or a pipe, is not read', async () => {
    truncateSync(join(folder, list(1)), 100 << 20);
    await refused('larger than 64 MB');
    rmSync(join(folder, list(1)));
    if (process.platform === 'win32') return;
    execFileSync('mkfifo', [join(folder, list(1))]);
    await refused('this is no file');
  });

  it('and one with forty thousand documents is told of in its place', async () => {
    const data = read(list(1));
    const [one] = data.documents;
    if (!one) throw new Error('no document');
    const documents = Array.from({ length: 40_000 }, (_, at) => ({ ...one, name: `qti/${at}.zip` }));
    write(list(1), { ...data, documents });
    edited((text) => text.replace('"qti/39999.zip"', '"qti/../39999.zip"'));
    await refused(lineOf('"qti/../39999.zip"'));
  });
});

it('the JSON Schema beside the lessons is the one of the reader', async () => {
  await expect(`${JSON.stringify(packingListJsonSchema(), null, 2)}\n`).toMatchFileSnapshot(
    '../../lessons/packing-list.schema.json',
  );
});
