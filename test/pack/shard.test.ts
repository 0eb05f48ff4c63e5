import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Document } from '../../src/pack/plan.js';
import { inShard } from '../../src/pack/shard.js';
import { documentsOf, orderOf, writeClass } from './class-order.js';

let folder: string;
/** Of a class with sheets of their own, of two versions in two systems of units, and of nobody. */
let sets: (readonly Document[])[];
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'benchleaf-shard-'));
  const learners = join(folder, 'class.csv');
  writeFileSync(learners, '');
  writeClass(learners, [
    'Ada Brown',
    'Ben Hill',
    'Ben Hill',
    'Cara Moss',
    'Dan Reed',
    'Eve Shaw',
    'Fay Todd',
  ]);
  const order = orderOf(
    ['16-simple-indexing'],
    ['book', 'handout', 'problems', 'key', 'grid', 'marks', 'practice', 'qti', 'sheets', 'templates'],
  );
  sets = [{ learners }, { learners, versions: 2 as const }, {}].map((whose) =>
    documentsOf({
      ...order,
      ...whose,
      only: new Set(
        [...order.only].filter((kind) => 'learners' in whose || !['grid', 'marks'].includes(kind)),
      ),
    }),
  );
});
afterAll(() => rmSync(folder, { recursive: true }));

const names = (documents: readonly Document[]) => documents.map(({ name }) => name);
const parts = (documents: readonly Document[], of: number) =>
  Array.from({ length: of }, (_, at) => inShard(documents, { number: at + 1, of }));

describe('the shards of a set', () => {
  it.each([1, 2, 3, 5, 8, 13, 100, 1000])('are %i, and together the whole, each document once', (of) => {
    for (const documents of sets)
      expect(parts(documents, of).flatMap(names).sort()).toEqual(names(documents).sort());
  });

  it('keep a sheet, its key and its data together', () => {
    for (const documents of sets)
      for (const of of [2, 3, 5, 8, 100])
        for (const part of parts(documents, of)) {
          const sheets = part.filter(({ kind }) => kind === 'problems');
          const keys = new Set(part.filter(({ kind }) => kind === 'key').map(({ variant }) => variant));
          expect(keys).toEqual(new Set(sheets.map(({ variant }) => variant)));
        }
  });

  it('are as long as one another, or one document longer, where nothing goes together', () =>
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 300 }), fc.integer({ min: 1, max: 1000 }), (count, of) => {
        const documents = Array.from({ length: count }, (_, at) => ({ name: `${at}.pdf` }));
        const all = Array.from({ length: of }, (_, at) => inShard(documents, { number: at + 1, of }));
        const lengths = all.map((part) => part.length);
        expect(Math.max(...lengths) - Math.min(...lengths)).toBeLessThanOrEqual(1);
        expect(all.flat()).toEqual(documents);
      }),
    ));
});
