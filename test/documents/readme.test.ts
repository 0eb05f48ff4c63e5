import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/program.js';

const scripts = (JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: Record<string, string> })
  .scripts;

describe.each(['README.md', 'DEVELOPERS.md'])('%s', (file) => {
  const text = readFileSync(file, 'utf8');

  it('names only paths that exist', () => {
    const paths = [...text.matchAll(/`((?:src|test|lessons|\.ci)\/[\w./-]+)`/g)].map(([, path = '']) => path);
    expect(paths.filter((path) => !existsSync(path))).toEqual([]);
  });

  it('names only scripts that exist', () => {
    const named = [...text.matchAll(/npm run (\w+)/g)].map(([, script = '']) => script);
    expect(named.filter((script) => !(script in scripts))).toEqual([]);
  });
});

it('every command the README shows works', async () => {
  const shown = [...readFileSync('README.md', 'utf8').matchAll(/^node dist\/cli\/main\.js (.+)$/gm)].map(
    ([, words = '']) => words,
  );
  expect(shown.length).toBeGreaterThan(3);
  for (const words of shown) {
    let errors = '';
    const code = await run(words.split(' '), { out: () => {}, err: (text) => (errors += text) });
    expect([code, errors], words).toEqual([0, '']);
  }
});
