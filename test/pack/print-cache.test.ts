import { randomUUID } from 'node:crypto';
import { mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { dayNow } from '../../src/pack/cache-entry.js';
import { PrintCache } from '../../src/pack/print-cache.js';
import { sha256Of } from '../../src/print/print-store.js';

let folder: string;
let assets: string;
let prints: number;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'benchleaf-cache-'));
  assets = join(folder, 'assets');
  mkdirSync(assets);
  writeFileSync(join(assets, 'style.css'), 'p { color: black }');
  prints = 0;
});
afterEach(() => rmSync(folder, { recursive: true }));

const open = () => new PrintCache(join(folder, 'cache'), assets);
/** What a printer makes: something of its own each time, as from a browser of which nothing is settled. */
const print = async (): Promise<Buffer> => Buffer.from(`print ${++prints}`);
const files = () => readdirSync(join(folder, 'cache/prints-1'));
const path = (name: string) => join(folder, 'cache/prints-1', name);

describe('a print cache', () => {
  it('gives what was printed from the same, and prints what was not', async () => {
    const first = await open().printed(['browser 1', 'html'], print);
    expect(first).toMatchObject({ kept: false, sha256: sha256Of('print 1') });
    expect(await open().printed(['browser 1', 'html'], print)).toEqual({ ...first, kept: true });
    for (const other of [
      ['browser 2', 'html'],
      ['browser 1', 'other'],
      ['browser 1html', ''],
      ['', 'browser 1html'],
    ])
      expect(await open().printed(other, print)).toMatchObject({ kept: false });
    expect(prints).toBe(5);
  });

  it('prints anew when style or fonts change, and when the browser has its own files there does not', async () => {
    await open().printed(['html'], print);
    mkdirSync(join(assets, '.browser-1'));
    expect((await open().printed(['html'], print)).kept).toBe(true);
    writeFileSync(join(assets, 'style.css'), 'p { color: grey }');
    expect((await open().printed(['html'], print)).kept).toBe(false);
  });

  it('is done without where it cannot be written', async () => {
    writeFileSync(join(folder, 'cache'), 'a file');
    const printed = await open().printed(['html'], print);
    expect([printed.pdf.toString(), printed.file]).toEqual(['print 1', undefined]);
    await open().clear();
  });

  it('passes on what printing throws, and keeps nothing then', async () => {
    await expect(open().printed(['html'], () => Promise.reject(new Error('no')))).rejects.toThrow('no');
    await open().clear();
    expect(() => files()).toThrow('ENOENT');
  });

  it('clears away what was not used for long, what is too much, and what is half-written', async () => {
    const cache = open();
    for (const html of ['a', 'b', 'c', 'd']) await cache.printed([html], print);
    const days = [0, 13, 15, -15]; // ago; the last is of a clock that was wrong
    for (const [at, name] of files().entries())
      renameSync(path(name), path(name.replace(/\d+$/, String(dayNow() - (days[at] ?? 0)))));
    const [old, fresh] = [`part-${randomUUID()}`, `part-${randomUUID()}`];
    for (const name of [old, fresh, 'part-of-a-novel']) writeFileSync(path(name), 'x');
    for (const name of [old, 'part-of-a-novel']) utimesSync(path(name), 1, 1);
    const of = (name: string): number => dayNow() - Number(name.split('.')[2]);
    await open().clear();
    expect(
      files()
        .filter((name) => !name.startsWith('part'))
        .map(of)
        .sort(),
    ).toEqual([0, 13]);
    expect(files()).toContain(fresh);
    expect(files()).not.toContain(old);
    expect(files()).toContain('part-of-a-novel'); // somebody's own
    await open().clear({ days: 14, bytes: 'print 1'.length });
    expect(
      files()
        .filter((name) => !name.startsWith('part'))
        .map(of),
    ).toEqual([0]);
  });

  it('keeps what this run used, however much that is', async () => {
    const cache = open();
    for (const html of ['a', 'b', 'c']) await cache.printed([html], print);
    await cache.clear({ days: 0, bytes: 0 });
    expect(files()).toHaveLength(3);
  });
});
