import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { lesson } from './nasty.js';

const SERIF = 'node_modules/@fontsource/source-serif-4';
const FONT = `${SERIF}/files/source-serif-4-latin-400-normal.woff2`;
const root = realpathSync(mkdtempSync(join(tmpdir(), 'benchleaf-installed-')));
const at = (name: string): string => join(root, name);
const out = at('out');

/** The program as it is installed, of which a part can be taken away: what is not copied is linked. */
beforeAll(() => {
  for (const name of ['dist/cli', 'dist/command']) cpSync(name, at(name), { recursive: true });
  for (const name of ['templates', SERIF]) cpSync(name, at(name), { recursive: true });
  for (const name of ['lessons', 'package.json']) symlinkSync(resolve(name), at(name));
  for (const folder of ['node_modules', 'node_modules/@fontsource']) {
    for (const name of readdirSync(folder))
      if (!['@fontsource', 'source-serif-4'].includes(name))
        symlinkSync(resolve(folder, name), at(`${folder}/${name}`));
  }
  mkdirSync(at('small'));
  writeFileSync(at('small/lesson.md'), lesson());
});
afterAll(() => rmSync(root, { recursive: true }));

function make(): { readonly code: number | null; readonly err: string } {
  const words = [at('small'), '--only', 'problems', '--quiet', '--no-cache', '--out', out];
  const run = spawnSync(process.execPath, [at('dist/cli/main.js'), 'make', ...words], { encoding: 'utf8' });
  return { code: run.status, err: run.stderr };
}
const gone = (part: string) => ({
  code: 3,
  err: `benchleaf: a part of Benchleaf is missing: ${part}. Install it again: npm ci\n`,
});
const font = readFileSync(FONT);
const unusable = {
  code: 1,
  err: expect.stringMatching(/problems\.pdf cannot be printed: the font Benchleaf Text cannot be used\n$/),
};

const STYLE = 'templates/styles/page.css';

it.each([
  ['a font', () => rmSync(at(FONT)), gone(at(FONT))],
  ['a template', () => rmSync(at(STYLE)), gone(at(STYLE))],
  ['half of a font', () => truncateSync(at(FONT), font.length >> 1), unusable],
  [
    'a package',
    () => rmSync(at(SERIF), { recursive: true }),
    gone('@fontsource/source-serif-4/unicode.json'),
  ],
])('without %s nothing is printed, with another font or none', (_, without, told) => {
  writeFileSync(at(FONT), font);
  cpSync(STYLE, at(STYLE));
  without();
  expect(make()).toEqual(told);
  expect(existsSync(out)).toBe(false);
});
