import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, it } from 'vitest';

/** The rooms in order: one may import those before it. */
const ROOMS = [
  'units',
  'diagnostics',
  'reading',
  'formula',
  'geometry',
  'handbook',
  'calculations',
  'kit',
  'figures',
  'problems',
  'lesson',
  'reference',
  'sheets',
  'exchange',
  'practice',
  'print',
  'pack',
  'cli',
];
/** Two routes, no shared code. */
const STRANGERS = [
  ['geometry', 'handbook'],
  ['geometry', 'formula'],
];
const ONLY_IN: Record<string, string[]> = {
  mathjs: ['formula'],
  commander: ['cli'],
  puppeteer: [], // it runs what lies in the folder that the user is in
  'puppeteer-core': ['print'],
  '@puppeteer': ['print'],
  yaml: ['reading'],
  zod: ['reading', 'kit', 'figures', 'problems', 'lesson', 'exchange', 'practice', 'pack'],
  'markdown-it': ['sheets'],
  katex: ['sheets'],
  handlebars: ['lesson', 'sheets', 'practice'],
  'pure-rand': ['problems'],
  'csv-parse': ['pack'],
  'cli-progress': ['pack'],
  fflate: ['exchange'],
  uqr: ['sheets'],
  'clipper2-ts': ['geometry'],
};

const files = readdirSync('src', { recursive: true, encoding: 'utf8' }).filter((name) =>
  name.endsWith('.ts'),
);
const imports = files.flatMap((file) =>
  [...readFileSync(`src/${file}`, 'utf8').matchAll(/(?:from|import\()\s*'([^']+)'/g)].map(([, to = '']) => ({
    file,
    to,
  })),
);

it('every room is known', () =>
  expect(
    [...new Set(files.filter((file) => file.includes('/')).map((file) => file.split('/')[0]))].sort(),
  ).toEqual([...ROOMS].sort()));

it('imports run one way', () => {
  const wrong = imports.filter(({ file, to }) => {
    const here = file.split('/')[0] ?? '';
    const there = to.startsWith('.') ? join(dirname(file), to).split('/')[0] : undefined;
    if (!there || there === here || !file.includes('/')) return false;
    return (
      ROOMS.indexOf(there) >= ROOMS.indexOf(here) ||
      STRANGERS.some((pair) => pair.includes(here) && pair.includes(there))
    );
  });
  expect(wrong).toEqual([]);
});

it('each package stays in its room', () => {
  const wrong = imports.filter(({ file, to }) => {
    const rooms = ONLY_IN[to.split('/')[0] ?? ''];
    return rooms && !rooms.includes(file.split('/')[0] ?? '');
  });
  expect(wrong).toEqual([]);
});

it('no file is over 300 lines, and half are 80 or less', () => {
  const lengths = files
    .map((file) => readFileSync(`src/${file}`, 'utf8').split('\n').length)
    .sort((a, b) => a - b);
  expect(lengths.at(-1)).toBeLessThanOrEqual(300);
  expect(lengths[lengths.length >> 1]).toBeLessThanOrEqual(80);
});
