import { execFileSync } from 'node:child_process';
import {
  closeSync,
  constants,
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readFileSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { deliver } from '../../src/pack/delivery.js';
import { PrintCache } from '../../src/pack/print-cache.js';
import { thisWorker } from '../../src/pack/worker.js';

let root: string;
let out: string;
const at = (...names: string[]): string => join(root, ...names);
const PRECIOUS = 'two years of work';

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'benchleaf-out-'));
  out = at('out');
  for (const name of ['precious/thesis.doc', 'precious/book.pdf', 'out/notes.txt']) put(name, PRECIOUS);
});
/** Whatever happened, what was there before is there, in one place or the other. */
afterEach(() => {
  for (const name of ['thesis.doc', 'book.pdf'])
    expect(readFileSync(at('precious', name), 'utf8')).toBe(PRECIOUS);
  expect(readFileSync(join(out, 'notes.txt'), 'utf8')).toBe(PRECIOUS);
  rmSync(root, { recursive: true });
});

function put(name: string, text: string): void {
  mkdirSync(dirname(at(name)), { recursive: true });
  writeFileSync(at(name), text);
}

const make = (...names: string[]): Promise<void> =>
  deliver(out, async (tray) => {
    for (const name of names) writeFileSync(tray.place(name), 'new');
  });

describe.runIf(process.platform !== 'win32')('a folder for documents that somebody has prepared', () => {
  it('with a link where a document goes: the link is replaced, not what it leads to', async () => {
    symlinkSync(at('precious/book.pdf'), join(out, 'book.pdf'));
    await make('book.pdf');
    expect(lstatSync(join(out, 'book.pdf')).isFile()).toBe(true);
    expect(readFileSync(join(out, 'book.pdf'), 'utf8')).toBe('new');
  });

  it('with a link to nowhere there: it is replaced, and nothing is made where it leads', async () => {
    symlinkSync(at('nowhere.pdf'), join(out, 'book.pdf'));
    await make('book.pdf');
    expect(readFileSync(join(out, 'book.pdf'), 'utf8')).toBe('new');
    expect(existsSync(at('nowhere.pdf'))).toBe(false);
  });

  it('with a link where a folder goes: nothing is put through it', async () => {
    symlinkSync(at('precious'), join(out, 'problems'));
    await expect(make('handout.pdf', 'problems/book.pdf')).rejects.toThrow(
      `cannot write ${join(out, 'problems/book.pdf')}: a link stands where a folder should be`,
    );
    expect(existsSync(join(out, 'handout.pdf'))).toBe(false);
  });

  it('with a folder where a document goes: told, and it stays', async () => {
    put('out/book.pdf/chapter.txt', PRECIOUS);
    await expect(make('book.pdf')).rejects.toThrow('a folder has that name');
    expect(readFileSync(join(out, 'book.pdf/chapter.txt'), 'utf8')).toBe(PRECIOUS);
  });

  it('with a file where folders go: told, and it stays', async () => {
    await expect(make('notes.txt/deep/book.pdf')).rejects.toThrow(
      `cannot write ${join(out, 'notes.txt/deep/book.pdf')}: `,
    );
  });

  it('that is a link to nowhere, or to itself: told', async () => {
    symlinkSync(at('nowhere'), at('dangling'));
    symlinkSync(at('round'), at('round'));
    for (const name of ['dangling', 'round'])
      await expect(deliver(at(name), async () => undefined)).rejects.toThrow(
        `cannot write into the folder ${at(name)}: a link that leads nowhere stands there`,
      );
    expect(existsSync(at('nowhere'))).toBe(false);
  });
});

describe.runIf(process.platform === 'linux')('a run of which somebody has made up the remains', () => {
  const NAME = '.benchleaf-making-aaaaaa';
  const dead = JSON.stringify({
    worker: { ...thisWorker(), pid: 4_000_000 },
    task: { set: '', shard: 1, of: 1 },
  });
  const journal = (name: string, replaces: boolean): string =>
    JSON.stringify({ folders: [], moves: [{ name, gone: false, replaces }] });

  it('takes nothing out of a folder that a link leads to', async () => {
    symlinkSync(at('precious'), join(out, 'elsewhere'));
    put(`out/${NAME}/run.json`, dead);
    put(`out/${NAME}/moves.json`, journal('elsewhere/thesis.doc', false));
    mkdirSync(join(out, NAME, 'made/elsewhere'), { recursive: true });
    await make('book.pdf');
  });

  it.each([
    ['made', 'notes.txt', false],
    ['replaced', 'thesis.doc', true],
  ])('moves nothing by a link that it has as its %s', async (part, name, replaces) => {
    mkdirSync(at('elsewhere'));
    put('elsewhere/0', PRECIOUS);
    put(`out/${NAME}/run.json`, dead);
    put(`out/${NAME}/moves.json`, journal(name, replaces));
    symlinkSync(at('elsewhere'), join(out, NAME, part));
    await make('book.pdf');
    expect(readFileSync(at('elsewhere/0'), 'utf8')).toBe(PRECIOUS);
    expect(existsSync(at('elsewhere/notes.txt'))).toBe(false);
  });

  it('is no run where it is a link, or has a link as what it took', async () => {
    put('elsewhere/run.json', dead);
    put('elsewhere/moves.json', journal('notes.txt', false));
    mkdirSync(at('elsewhere/made'));
    symlinkSync(at('elsewhere'), join(out, NAME));
    put(`out/${NAME}b/run.json`, dead);
    symlinkSync('.', join(out, `${NAME}b`, 'taken'));
    put(`out/${NAME}c/run.json`, dead);
    mkdirSync(join(out, `${NAME}c`, 'taken'));
    symlinkSync(at('elsewhere'), join(out, `${NAME}c`, 'taken/d'));
    await make('book.pdf');
    expect(existsSync(at('elsewhere/run.json'))).toBe(true);
    expect(existsSync(join(out, `${NAME}b`))).toBe(false);
  });
});

describe.runIf(process.platform !== 'win32')('a cache that somebody has prepared', () => {
  const cached = async (): Promise<string> => {
    mkdirSync(at('assets'), { recursive: true });
    const cache = new PrintCache(join(out, '.cache'), at('assets'));
    const { pdf, file } = await cache.printed(['html'], async () => Buffer.from('printed'));
    await cache.clear();
    expect(String(pdf)).toBe('printed');
    return file ?? '';
  };

  it.each([
    ['a link', () => symlinkSync(at('precious'), join(out, '.cache'))],
    [
      'a link inside',
      () => put('out/.cache/x', '') ?? symlinkSync(at('precious'), join(out, '.cache/prints-1')),
    ],
  ])('by %s: nothing of the other folder is thrown away', async (_, prepare) => {
    prepare();
    for (const name of ['thesis.doc', 'book.pdf']) utimesSync(at('precious', name), 1, 1);
    expect(await cached()).not.toBe('');
  });

  it.each([
    ['a file', () => put('out/.cache', PRECIOUS)],
    ['a link to nowhere', () => symlinkSync(at('nowhere'), join(out, '.cache'))],
    ['a link to itself', () => symlinkSync('.cache', join(out, '.cache'))],
  ])('by %s: nothing is kept, and all is printed', async (_, prepare) => {
    prepare();
    expect(await cached()).toBe('');
    expect(existsSync(at('nowhere'))).toBe(false);
  });

  it('by a pipe in the place of what was kept: it is not waited for', async () => {
    const file = await cached();
    rmSync(file);
    execFileSync('mkfifo', [file]);
    try {
      expect(await Promise.race([cached(), sleep(20_000, 'waits', { ref: false })])).not.toBe('waits');
    } finally {
      closeSync(openSync(file, constants.O_RDWR)); // lets whoever waits go on
    }
  });
});
