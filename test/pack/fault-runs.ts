import { execFileSync, spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { filesIn } from '../../src/pack/set-files.js';

/** One short lesson: what is tested is the run, not the pages. */
const LESSON = `---
title: How far apart
cautions: [drilling-plates]
example: { teeth: 60, leaves: 8, module: 0.8 mm }
problems:
  centres:
    calculation: mesh.centreDistance
    vary: { teeth: 48..96 by 4, leaves: [6, 8, 10], module: [0.6, 0.8] mm }
    ask: A wheel of {{teeth}} teeth drives {{leaves}} leaves, module {{mm module}}. How far apart are the arbors?
    find: centreDistance
    answer: { to: 0.01 mm, accept: 0.01 mm }
---
The pitch circles touch.

{{problems}}
`;

/** How a run ended. */
export interface Ended {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly out: string;
  readonly err: string;
}

/** A run under way. */
export interface Going {
  readonly pid: number;
  readonly ended: Promise<Ended>;
  stop(signal: NodeJS.Signals): void;
}

/** The program as it is now, in a place of its own, with a lesson and a class to run it on. */
export class FaultRuns {
  readonly folder = mkdtempSync(join(tmpdir(), 'benchleaf-faults-'));
  readonly #program = join(this.folder, 'program');
  readonly lesson = join(this.folder, 'gears');
  readonly learners = join(this.folder, 'class.csv');

  constructor(readonly count: number) {
    mkdirSync(this.#program);
    mkdirSync(this.lesson);
    const compiler = 'node_modules/typescript/bin/tsc';
    const outDir = join(this.#program, 'dist');
    execFileSync(process.execPath, [compiler, '-p', 'tsconfig.build.json', '--noCheck', '--outDir', outDir]);
    for (const name of ['node_modules', 'lessons', 'templates', 'package.json'])
      symlinkSync(resolve(name), join(this.#program, name));
    writeFileSync(join(this.lesson, 'lesson.md'), LESSON);
    const names = Array.from({ length: count }, (_, at) => `Learner ${at + 1}`);
    writeFileSync(this.learners, ['name', ...names, ''].join('\n'));
  }

  /** Begins to make the class's sheets into a folder. */
  begin(out: string, ...more: string[]): Going {
    const words = [
      'make',
      this.lesson,
      '--learners',
      this.learners,
      '--only',
      'problems',
      '--out',
      out,
      ...more,
    ];
    const child = spawn(process.execPath, [join(this.#program, 'dist/cli/main.js'), ...words], {
      env: { ...process.env, SOURCE_DATE_EPOCH: '1700000000' },
    });
    let [said, complained] = ['', ''];
    child.stdout.on('data', (text: Buffer) => {
      said += text;
    });
    child.stderr.on('data', (text: Buffer) => {
      complained += text;
    });
    const ended = new Promise<Ended>((done) =>
      child.on('close', (code, signal) => done({ code, signal, out: said, err: complained })),
    );
    return { pid: child.pid ?? 0, ended, stop: (signal) => void child.kill(signal) };
  }

  /** Makes them, and tells how many were printed now and how many were kept. */
  async make(out: string, ...more: string[]): Promise<{ readonly printed: number; readonly kept: number }> {
    const { code, err, out: said } = await this.begin(out, '--json', '--quiet', ...more).ended;
    if (code !== 0) throw new Error(`exit ${code}: ${err}`);
    const documents = (JSON.parse(said) as { documents: { kept?: true; pages: number }[] }).documents;
    const kept = documents.filter((one) => one.kept).length;
    return { kept, printed: documents.filter(({ pages }) => pages > 0).length - kept };
  }
}

/** Where a run into `out` puts its files. */
export const setIn = (out: string): string => join(out, 'gears');

/** Every file that can be seen in a folder, by its hash; nothing where there is no folder. */
export function hashes(folder: string): Record<string, string> {
  if (!existsSync(folder)) return {};
  return Object.fromEntries(
    filesIn(folder).map((name) => [
      name,
      createHash('sha256')
        .update(readFileSync(join(folder, name)))
        .digest('hex'),
    ]),
  );
}

/** The private folders of runs. */
export const leftIn = (folder: string): string[] =>
  existsSync(folder) ? readdirSync(folder).filter((name) => name.startsWith('.benchleaf-')) : [];

const CACHE = '.cache/prints-1';
export const cacheOf = (out: string): string => join(out, CACHE);

/** The entries of a cache, by their files. */
export const entriesOf = (out: string): string[] =>
  existsSync(cacheOf(out))
    ? readdirSync(cacheOf(out))
        .filter((name) => !name.startsWith('part-'))
        .sort()
    : [];
