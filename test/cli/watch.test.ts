import { type ChildProcess, execFile, spawn } from 'node:child_process';
import { once } from 'node:events';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { lookAt } from '../print/fingerprint.js';

let folder = '';
let temporary = '';
let [lesson, pdf] = ['', ''];
let child: ChildProcess;
let said = '';

/** Waits for it to say something that it has not said before, and gives that. */
async function says(what: RegExp, from: number): Promise<string> {
  while (!what.test(said.slice(from))) {
    if (child.exitCode !== null) throw new Error(`it has ended: ${said}`);
    await sleep(20);
  }
  return said.slice(from);
}

const text = () => readFileSync(lesson, 'utf8');
const titled = (title: string) => text().replace(/^title: .*/m, `title: ${title}`);
const titleOfPdf = async () => (await lookAt(pdf)).outline.join(' ');
const AGAIN = /handout\.pdf {2}\d+ pages?, \d+\.\d\d s\n/;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'benchleaf-watching-'));
  temporary = join(folder, 'temporary');
  mkdirSync(join(folder, 'gears'));
  mkdirSync(temporary);
  lesson = join(folder, 'gears/lesson.md');
  pdf = join(folder, 'out/gears/handout.pdf');
  copyFileSync('lessons/06-blank-and-pinion-sizes/lesson.md', lesson);
  copyFileSync('lessons/kits/harrow-lane.yaml', join(folder, 'kit.yaml'));
  const words = ['make', 'gears', '--kit', 'kit.yaml', '--only', 'handout', '--watch'];
  child = spawn(process.execPath, [resolve('dist/cli/main.js'), ...words], {
    cwd: folder,
    env: { ...process.env, TMPDIR: temporary },
  });
  for (const stream of [child.stdout, child.stderr])
    stream?.on('data', (data: Buffer) => {
      said += data;
    });
  expect(await says(/ends\.\n/, 0)).toMatch(/Watching 2 files and the templates\. Ctrl-C ends\.\n/);
});
afterAll(() => {
  child.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});

describe.runIf(process.platform !== 'win32')('make --watch', () => {
  it('makes a handout again when its lesson is saved, and once for a save in several steps', async () => {
    const from = said.length;
    const changed = titled('Sizes of blanks');
    writeFileSync(lesson, '');
    await sleep(5);
    writeFileSync(lesson, changed);
    writeFileSync(lesson, changed);
    await says(AGAIN, from);
    expect(await titleOfPdf()).toContain('Sizes of blanks');
    await sleep(300);
    expect(said.slice(from).match(new RegExp(AGAIN, 'g'))).toHaveLength(1);
    expect(said.slice(from)).not.toContain('error');
  });

  it('follows a lesson that is saved by renaming, again and again, and away for a moment', async () => {
    for (const title of ['Sizes by renaming', 'Sizes once more']) {
      const from = said.length;
      const changed = titled(title);
      renameSync(lesson, `${lesson}~`);
      await sleep(100);
      const beside = join(folder, 'gears/.saving');
      writeFileSync(beside, changed);
      renameSync(beside, lesson);
      expect(await says(AGAIN, from)).not.toContain('there is no');
      expect(await titleOfPdf()).toContain(title);
    }
  });

  it('tells a fault with its place, keeps what was made, and goes on', async () => {
    const [from, sound, before] = [said.length, text(), readFileSync(pdf)];
    writeFileSync(lesson, sound.replace(/^title:/m, 'titel:'));
    const told = await says(/Nothing was made\..*\n/, from);
    await says(/Did you mean "title"\?\n/, from);
    expect(said.slice(from)).toContain('gears/lesson.md:2:1: error[');
    expect(told).toContain('What was made before stays');
    expect(readFileSync(pdf).equals(before)).toBe(true);
    const mended = said.length;
    writeFileSync(lesson, sound.replace(/^title:.*/m, 'title: Sizes as mended'));
    await says(AGAIN, mended);
    expect(await titleOfPdf()).toContain('Sizes as mended');
  });

  it('sees the kit, and files that are new, and makes nothing that is the same', async () => {
    const first = said.length;
    const before = statSync(pdf).ino;
    writeFileSync(join(folder, 'gears/notes.md'), 'notes');
    await says(/Saved; nothing on the pages has changed\./, first);
    expect(statSync(pdf).ino).toBe(before);
    const from = said.length;
    const kit = join(folder, 'kit.yaml');
    writeFileSync(kit, readFileSync(kit, 'utf8').replace(/^kit: .*/m, 'kit: Another bench'));
    await says(AGAIN, from);
    expect((await lookAt(pdf)).text.join(' ')).toContain('Another bench');
  });

  it('ends on Ctrl-C with exit code 0, and leaves nothing behind', async () => {
    expect(readdirSync(temporary)).toHaveLength(1);
    child.kill('SIGINT');
    expect(await once(child, 'exit')).toEqual([0, null]);
    expect(readdirSync(temporary)).toEqual([]);
    expect(readdirSync(join(folder, 'out/gears'))).toEqual(['handout.pdf']);
  });
});

describe('make --watch that cannot begin', () => {
  it.each([
    [['--json'], 'benchleaf: --watch and --json do not go together.'],
    [['no-such-lesson'], 'benchleaf: there is no lesson or course "no-such-lesson".'],
  ])('%s', async (words, complaint) => {
    const ended = await new Promise((done) => {
      const all = ['dist/cli/main.js', 'make', '--watch', '--out', join(folder, 'none'), ...words];
      execFile(process.execPath, all, (error, out, err) => done({ code: error?.code, out, err }));
    });
    expect(ended).toEqual({ code: 2, out: '', err: expect.stringContaining(complaint) });
    expect(existsSync(join(folder, 'none'))).toBe(false);
  });
});
