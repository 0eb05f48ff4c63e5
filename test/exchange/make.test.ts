import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { keySchema } from '../../src/exchange/key-schema.js';
import type { Made } from '../../src/pack/make.js';
import { benchleaf } from '../cli/benchleaf.js';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'benchleaf-exchange-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));
afterEach(() => vi.unstubAllEnvs());

async function made(...words: string[]): Promise<Made> {
  const { code, out, err } = await benchleaf('make', '--quiet', '--json', ...words);
  expect([code, err]).toEqual([0, '']);
  return JSON.parse(out) as Made;
}

const lesson = '16-simple-indexing';

describe('make --only qti', () => {
  it('writes one package, and needs no browser for it', async () => {
    vi.stubEnv('BENCHLEAF_BROWSER', '/nowhere/to-be-found');
    const out = join(folder, 'one');
    const { documents, variant } = await made(lesson, '--only', 'qti', '--out', out);
    const file = join(out, lesson, 'qti.zip');
    const bytes = readFileSync(file);
    expect(documents).toEqual([{ kind: 'qti', file, pages: 0, bytes: bytes.length, variant }]);
    expect(readdirSync(join(out, lesson))).toEqual(['packing-list-1-of-1.json', 'qti.zip']);
    expect(strFromU8(unzipSync(bytes)['imsmanifest.xml'] as Uint8Array)).toContain('QTI Package');
    await made(lesson, '--only', 'qti', '--out', join(folder, 'again'));
    expect(readFileSync(join(folder, 'again', lesson, 'qti.zip')).equals(bytes)).toBe(true);
  });

  it('writes one for each learner, named like the sheets', async () => {
    const list = join(folder, 'class.csv');
    writeFileSync(list, 'name\nÅsa Ökten\n"=1+1"\n"O’Neill, Ben"\n');
    const out = join(folder, 'class');
    const { documents } = await made(lesson, '--only', 'qti', '--out', out, '--learners', list);
    expect(readdirSync(join(out, lesson, 'qti'))).toEqual([
      '01-asa-okten.zip',
      '02-1-1.zip',
      '03-oneill-ben.zip',
    ]);
    expect(documents.map(({ learner }) => learner)).toEqual(['Åsa Ökten', '=1+1', 'O’Neill, Ben']);
    expect(new Set(documents.map(({ variant }) => variant)).size).toBe(3);
  });

  it('is refused where there are no problems', async () => {
    const bare = join(folder, 'bare/lesson.md');
    const { mkdirSync } = await import('node:fs');
    mkdirSync(join(folder, 'bare'));
    writeFileSync(bare, '---\ntitle: Bare\n---\n\nNothing is asked.\n');
    const { code, err } = await benchleaf('make', bare, '--only', 'qti', '--out', join(folder, 'none'));
    expect([code, existsSync(join(folder, 'none'))]).toEqual([2, false]);
    expect(err).toMatch(/there is nothing to make/);
  });
});

describe('make with keys', () => {
  it('writes the data beside each key, and no package unless it is asked for', async () => {
    const list = join(folder, 'two.csv');
    writeFileSync(list, 'name\nAda Brown\n"=1+1"\n');
    const out = join(folder, 'keys');
    await made(lesson, '--out', out, '--learners', list);
    expect(readdirSync(join(out, lesson))).not.toContain('qti');
    const keys = join(out, lesson, 'keys');
    expect(readdirSync(keys).sort()).toEqual([
      '01-ada-brown.json',
      '01-ada-brown.pdf',
      '02-1-1.json',
      '02-1-1.pdf',
    ]);
    const read = keySchema.parse(JSON.parse(readFileSync(join(keys, '02-1-1.json'), 'utf8')));
    expect(read).toMatchObject({ learner: '=1+1', kit: 'Harrow Lane class workshop' });
  });
});

it('list documents tells of both, and that a package is made only when it is asked for', async () => {
  const { out } = await benchleaf('list', 'documents');
  expect(out).toMatch(/^key: .*JSON/m);
  expect(out).toMatch(/^qti: .*QTI 3\.0.*only when it is asked for$/m);
});
