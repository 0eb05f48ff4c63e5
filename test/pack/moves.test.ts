import { spawnSync } from 'node:child_process';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { takeBack } from '../../src/pack/moves.js';
import { built } from './built.js';

let root: string;
let folder: string;
let own: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'benchleaf-moves-'));
  folder = join(root, 'out');
  own = join(folder, '.benchleaf-making-one');
});
afterEach(() => rmSync(root, { recursive: true }));

function put(below: string, files: Record<string, string>): void {
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(below, name)), { recursive: true });
    writeFileSync(join(below, name), text);
  }
}

/** All that is in the folder, the private one apart. */
function seen(): Record<string, string> {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
    (name) => !name.startsWith('.'),
  );
  return Object.fromEntries(
    names.sort().map((name) => {
      const path = join(folder, name);
      return [name, statSync(path).isDirectory() ? 'folder' : readFileSync(path, 'utf8')];
    }),
  );
}

const OLD = { 'a.pdf': 'old a', 'list.json': 'old list', 'keys/k.pdf': 'old key', 'mine.txt': 'mine' };
const NEW = {
  'a.pdf': 'new a',
  'keys/k.pdf': 'new key',
  'keys/l.pdf': 'new l',
  'deep/er/b.pdf': 'new b',
  'list.json': 'new list',
};

let program: string;
beforeAll(() => {
  program = built();
});
afterAll(() => rmSync(program, { recursive: true }));

/** Does it in a process of its own, which ends by force before it changes the disk for so many-th time. */
function endedAt(step: number, what: 'moveAll' | 'takeBack'): boolean {
  const changes = JSON.stringify({ gone: ['list.json'], made: Object.keys(NEW) });
  const code = `
    import fs from 'node:fs';
    import { syncBuiltinESMExports } from 'node:module';
    let left = ${step};
    for (const name of ['mkdirSync', 'renameSync', 'unlinkSync', 'rmdirSync', 'openSync']) {
      const real = fs[name];
      fs[name] = (...all) => {
        if (name === 'openSync' && all[1] !== 'w') return real(...all);
        if (--left === 0) process.kill(process.pid, 'SIGKILL');
        return real(...all);
      };
    }
    syncBuiltinESMExports();
    const { moveAll, takeBack } = await import('${program}/pack/moves.js');
    ${what}(${JSON.stringify(folder)}, ${JSON.stringify(own)}, ${changes});`;
  const { signal, status, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', code]);
  if (signal !== 'SIGKILL') expect([status, String(stderr)]).toEqual([0, '']);
  return signal === 'SIGKILL';
}

function begin(): void {
  rmSync(folder, { recursive: true, force: true });
  put(folder, OLD);
  put(join(own, 'made'), NEW);
}

const BEFORE = { ...OLD, keys: 'folder' };
const AFTER = { ...OLD, ...NEW, keys: 'folder', deep: 'folder', 'deep/er': 'folder' };

describe.runIf(process.platform !== 'win32')('documents that are moved into place', () => {
  it('are all there or none, wherever the run was ended by force', () => {
    let steps = 0;
    for (;;) {
      begin();
      steps += 1;
      const ended = endedAt(steps, 'moveAll');
      takeBack(folder, own);
      expect(seen(), `ended before step ${steps}`).toEqual(ended ? BEFORE : AFTER);
      if (!ended) break;
    }
    expect(steps).toBeGreaterThan(15);
  });

  it('are taken back though that was ended by force too', () => {
    begin();
    expect(endedAt(17, 'moveAll')).toBe(true);
    expect(seen()).not.toEqual(BEFORE);
    const half = `${folder}-half`;
    cpSync(folder, half, { recursive: true });
    let steps = 0;
    for (;;) {
      rmSync(folder, { recursive: true });
      cpSync(half, folder, { recursive: true });
      steps += 1;
      const ended = endedAt(steps, 'takeBack');
      takeBack(folder, own);
      expect(seen(), `ended before step ${steps}`).toEqual(BEFORE);
      if (!ended) break;
    }
    expect(steps).toBeGreaterThan(5);
  });

  it('never are what a journal says that leads out of the folder', () => {
    begin();
    writeFileSync(join(root, 'outside.txt'), 'outside');
    const moves = [{ name: '../outside.txt', gone: false, replaces: false }];
    writeFileSync(join(own, 'moves.json'), JSON.stringify({ folders: [], moves }));
    takeBack(folder, own);
    expect(readFileSync(join(root, 'outside.txt'), 'utf8')).toBe('outside');
  });
});
