import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { listCalculations } from '../../src/index.js';

const BOUNDS = /(?<=<!-- calculations: made from the catalogue -->\n)[\s\S]*(?=<!-- end of calculations -->)/;

type Listed = ReturnType<typeof listCalculations>[number];

const keys = (list: readonly { key: string; unit: string }[]): string =>
  list.map(({ key, unit }) => (unit ? `${key} (${unit})` : key)).join(', ');

const row = ({ name, title, given, found }: Listed): string =>
  `| \`${name}\` | ${title} | ${keys(given)} | ${keys(found)} |`;

it('the README’s table of calculations is the catalogue’s (vitest -u writes it)', async () => {
  const table = [
    '| name | what it is | given | found |',
    '|---|---|---|---|',
    ...listCalculations().map(row),
  ];
  const readme = readFileSync('README.md', 'utf8');
  expect(readme).toMatch(BOUNDS);
  await expect(readme.replace(BOUNDS, () => `\n${table.join('\n')}\n\n`)).toMatchFileSnapshot(
    '../../README.md',
  );
});
