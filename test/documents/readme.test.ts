import { execFileSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const scripts = (JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: Record<string, string> })
  .scripts;

describe.each(['README.md', 'DEVELOPERS.md'])('%s', (file) => {
  const text = readFileSync(file, 'utf8');

  it('names only paths that exist', () => {
    const paths = [...text.matchAll(/[`(]((?:src|test|lessons|templates|\.ci)\/[\w./-]+)[`)]/g)].map(
      ([, path = '']) => path,
    );
    expect(paths.filter((path) => !existsSync(path))).toEqual([]);
  });

  it('names only scripts that exist', () => {
    const named = [...text.matchAll(/npm run (\w+)/g)].map(([, script = '']) => script);
    expect(named.filter((script) => !(script in scripts))).toEqual([]);
  });
});

describe('a reader who types what the README shows', () => {
  const readme = readFileSync('README.md', 'utf8');
  let folder = '';

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'benchleaf-readme-'));
    for (const name of ['dist', 'lessons', 'templates', 'node_modules', 'package.json'])
      symlinkSync(resolve(name), join(folder, name));
    writeFileSync(join(folder, 'class.csv'), 'name\nAda Brown\nBen Carter\n');
    const lesson = /```markdown\n(.*?)```/s.exec(readme)?.[1];
    mkdirSync(join(folder, 'gears'));
    writeFileSync(join(folder, 'gears/lesson.md'), lesson ?? '');
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const commands = [...readme.matchAll(/^(?:cp|node dist\/cli\/main\.js) .+$/gm)].map(([line]) => line);
  const inText = [...readme.matchAll(/`(node dist\/cli\/main\.js [^`]+)`/g)].map(([, line = '']) => line);

  it.each([...commands, ...inText])('%s', (line) => {
    execFileSync('/bin/sh', ['-c', line], { cwd: folder, encoding: 'utf8', stdio: 'pipe' });
  });

  it('gets the files that it names', () => {
    expect(commands.length).toBeGreaterThan(8);
    const made = [...readme.matchAll(/^- `([\w-]+\.pdf)`/gm)].map(([, name = '']) => name);
    expect(made).toHaveLength(5);
    execFileSync('/bin/sh', ['-c', 'node dist/cli/main.js make --quiet'], { cwd: folder });
    for (const name of made) expect(existsSync(join(folder, 'out/larkfield', name)), name).toBe(true);
    expect(existsSync(join(folder, 'out/gears/handout.pdf'))).toBe(true);
    expect(existsSync(join(folder, 'out/larkfield/problems/01-ada-brown.pdf'))).toBe(true);
  });
});
