import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

/** Where the clock on the wall is asked, and what for: no patience is counted by it, since it may jump by a year. */
const ASKED: Readonly<Record<string, string>> = {
  'src/exchange/qti/package.ts': 'a date that is always the same',
  'src/pack/cache-entry.ts': 'the day of last use, which may be wrong',
  'src/pack/claim.ts': 'when another run began, for a reader',
  'src/pack/make.ts': 'the date of the builder',
  'src/pack/plan.ts': 'the date that is printed',
  'src/pack/print-cache.ts': 'what lies there for a day',
  'src/pack/run-folder.ts': 'what lies there for a day',
  'src/pack/worker.ts': 'when this run began, for a reader',
  'src/print/bundled.ts': 'what lies there for an hour',
};

it('patience is counted by a clock that only goes on', () => {
  const asking = readdirSync('src', { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts') && !name.startsWith('practice/page'))
    .map((name) => `src/${name}`)
    .filter((name) => /\bDate\.now\b|\bnew Date\(/.test(readFileSync(name, 'utf8')));
  expect(asking.sort()).toEqual(Object.keys(ASKED));
});
