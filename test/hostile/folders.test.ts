import { execFileSync, spawnSync } from 'node:child_process';
import { chmodSync, cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { thisWorker } from '../../src/pack/worker.js';
import { benchleaf, type Ended } from '../cli/benchleaf.js';
import { hashes } from '../pack/fault-runs.js';
import { course, kit, lesson } from './nasty.js';

const root = mkdtempSync(join(tmpdir(), 'benchleaf-folders-'));
const at = (...names: string[]): string => join(root, ...names);
const KIT = resolve('lessons/kits/harrow-lane.yaml');
/** Of kinds that need no browser. */
const QUICK = ['--only', 'practice', '--quiet', '--out', at('out')];

/** Puts something in the place of a file. */
const ODD: Readonly<Record<string, (path: string) => void>> = {
  'a pipe': (path) => void execFileSync('mkfifo', [path]),
  'a link to a device without end': (path) => symlinkSync('/dev/zero', path),
  'a link to what this process was told': (path) => symlinkSync('/proc/self/environ', path),
  'a link to itself': (path) => symlinkSync(path, path),
  'a link to nowhere': (path) => symlinkSync(at('nowhere'), path),
  'a link to a folder': (path) => symlinkSync(root, path),
  'a folder': (path) => void mkdirSync(path),
};
const CONTENT: Readonly<Record<string, string>> = {
  'lesson.md': lesson(),
  'kit.yaml': kit(''),
  'course.yaml': course('', KIT),
  'class.csv': 'name\nAda\n',
};
/** How each is named to the program. */
const WORDS: Readonly<Record<string, (folder: string) => string[]>> = {
  'lesson.md': (folder) => ['make', folder],
  'kit.yaml': (folder) => ['make', at('good'), '--kit', join(folder, 'kit.yaml')],
  'course.yaml': (folder) => ['make', join(folder, 'course.yaml')],
  'class.csv': (folder) => ['make', at('good'), '--learners', join(folder, 'class.csv')],
};

/** In a process of its own, since nothing ends one that waits for a pipe, and as nobody in particular where told. */
function alone(words: readonly string[], uid?: number): Ended {
  const { status, stdout, stderr } = spawnSync(process.execPath, [resolve('dist/cli/main.js'), ...words], {
    encoding: 'utf8',
    timeout: 60_000,
    ...(uid === undefined ? {} : { uid, gid: uid }),
  });
  return { code: status ?? -1, out: stdout ?? '', err: stderr ?? '' };
}

function folder(name: string): string {
  mkdirSync(at(name));
  return at(name);
}

beforeAll(() => {
  chmodSync(root, 0o755);
  writeFileSync(join(folder('good'), 'lesson.md'), CONTENT['lesson.md'] ?? '');
});
afterAll(() => rmSync(root, { recursive: true }));

describe.runIf(process.platform === 'linux')('in the place of a file', () => {
  let count = 0;
  const cases = Object.keys(WORDS).flatMap((file) => Object.keys(ODD).map((odd) => [odd, file] as const));

  it.each(cases)('%s is told of, as %s', async (odd, file) => {
    const place = folder(`odd-${count++}`);
    ODD[odd]?.(join(place, file));
    const words = [...(WORDS[file]?.(place) ?? []), ...QUICK];
    const { code, err } = odd === 'a pipe' ? alone(words) : await benchleaf(...words);
    expect([code, err]).toEqual([
      odd.includes('process') ? 1 : 2,
      expect.stringMatching(odd.includes('process') ? /:1:\d+: error/ : /there is no (lesson|course|file)/),
    ]);
    expect(err).not.toContain('PATH=');
    expect(hashes(at('out'))).toEqual({});
  });

  it.each(Object.keys(WORDS))('what may not be read is told of, as %s', (file) => {
    const place = folder(`unreadable-${count++}`);
    writeFileSync(join(place, file), CONTENT[file] ?? '');
    chmodSync(join(place, file), 0);
    const out = folder(`out-${count++}`);
    chmodSync(out, 0o777);
    const { code, err } = alone(
      [...(WORDS[file]?.(place) ?? []), ...QUICK.slice(0, 3), '--out', out],
      nobody,
    );
    if (err.includes('Cannot find module')) return; // the program itself lies where nobody may look
    expect([code, err]).toEqual([3, expect.stringMatching(/cannot read .+: you may not read it/)]);
  });
});

const nobody = process.getuid?.() === 0 ? 65534 : undefined;

describe.runIf(process.platform !== 'win32')('links that a user has made', () => {
  it('to folders of lessons, and to kits and lists that he names, go on working', async () => {
    const place = folder('linked');
    for (const [name, text] of Object.entries(CONTENT)) writeFileSync(at('linked', `real-${name}`), text);
    mkdirSync(join(place, '01-small'));
    writeFileSync(join(place, '01-small/lesson.md'), CONTENT['lesson.md'] ?? '');
    symlinkSync(join(place, '01-small'), join(place, '02-other'));
    for (const name of ['kit.yaml', 'course.yaml', 'class.csv'])
      symlinkSync(`real-${name}`, join(place, name));
    writeFileSync(join(place, 'real-course.yaml'), course('lessons: [01-small]\n', KIT));
    for (const words of [
      [join(place, '02-other')],
      [join(place, 'course.yaml')],
      [at('good'), '--kit', KIT, '--learners', join(place, 'class.csv')],
    ]) {
      const out = join(place, 'out');
      const { code, err } = await benchleaf('make', ...words, '--only', 'practice', '--quiet', '--out', out);
      expect([code, err]).toEqual([0, '']);
    }
  });

  it('are not followed out of a lesson’s folder, or from a course to a kit that is elsewhere', async () => {
    const place = folder('leading-out');
    writeFileSync(at('secret'), 'title: nobody’s business\n');
    symlinkSync(at('secret'), join(place, 'lesson.md'));
    symlinkSync(at('secret'), join(place, 'kit.yaml'));
    mkdirSync(join(place, '01-small'));
    writeFileSync(join(place, '01-small/lesson.md'), CONTENT['lesson.md'] ?? '');
    writeFileSync(join(place, 'course.yaml'), course('lessons: [01-small]\n', 'kit.yaml'));
    for (const words of [
      ['check', place],
      ['make', place, ...QUICK],
      ['make', join(place, 'course.yaml'), ...QUICK],
    ]) {
      const { code, err } = await benchleaf(...words);
      expect([code, err]).toEqual([
        1,
        expect.stringMatching(/:\d+:\d+: error.+ link that leads out of its folder/),
      ]);
      expect(err).not.toContain('business');
    }
  });

  it('to another disk, for the documents, go on working', async () => {
    mkdirSync(at('disk/season'), { recursive: true });
    symlinkSync(at('disk'), at('to-disk'));
    symlinkSync(at('disk/season'), at('disk/good'));
    const { code, err } = await benchleaf('make', at('good'), ...QUICK.slice(0, 3), '--out', at('to-disk'));
    expect([code, err]).toEqual([0, '']);
    expect(hashes(at('disk/season'))).toHaveProperty('practice/index.html');
  });
});

it.runIf(process.platform === 'linux')('the remains of a run that are pipes are not waited for', () => {
  const task = { set: '', shard: 1, of: 1 };
  const dead = JSON.stringify({ worker: { ...thisWorker(), pid: 4_000_000 }, task });
  for (const pipe of ['run.json', 'moves.json']) {
    const remains = at('prepared/good', `.benchleaf-making-${pipe.slice(0, 3)}aaa`);
    mkdirSync(remains, { recursive: true });
    if (pipe !== 'run.json') writeFileSync(join(remains, 'run.json'), dead);
    execFileSync('mkfifo', [join(remains, pipe)]);
  }
  const { code, err } = alone(['make', at('good'), ...QUICK.slice(0, 3), '--out', at('prepared')]);
  expect([code, err]).toEqual([0, '']);
});

describe('a part of another file', () => {
  it.each(['{{> ../x}}', '{{> "/etc/passwd"}}', '{{#> ../../etc/passwd}}{{/ ../../etc/passwd}}'])(
    '%s is told of at its place',
    async (text) => {
      const place = at('parts');
      cpSync(at('good'), place, { recursive: true });
      writeFileSync(join(place, 'lesson.md'), lesson({ body: `Words.\n\n${text}\n\n{{problems}}\n` }));
      const { code, err } = await benchleaf('make', place, ...QUICK);
      expect([code, err]).toEqual([1, expect.stringMatching(/lesson\.md:15:\d+: error\[lesson\//)]);
    },
  );
});
