import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ContentError } from '../../src/diagnostics/diagnostic.js';
import { CommandError } from '../../src/diagnostics/errors.js';
import { evaluateFormula, FormulaError } from '../../src/formula/formula.js';
import { packingListName, packingListText } from '../../src/pack/packing-list.js';
import { readPackingList } from '../../src/pack/read-packing-list.js';
import { printedVariant, readVariant } from '../../src/problems/variant.js';
import { parseAngle } from '../../src/units/angle.js';
import { parseFraction } from '../../src/units/fraction.js';
import { parseLength } from '../../src/units/length.js';
import { benchleaf } from '../cli/benchleaf.js';
import { edited } from './edits.js';

const RUNS = { numRuns: Number(process.env.FUZZ ?? 200) };

/** What throws nothing but errors of some classes; what they are thrown for comes to undefined. */
function orRefused<T>(work: () => T, ...classes: (abstract new (...args: never) => Error)[]): T | undefined {
  try {
    return work();
  } catch (error) {
    if (classes.some((one) => error instanceof one)) return undefined;
    throw error;
  }
}

describe('what is typed and spoilt is refused, or read as it is written', () => {
  it('a variant code', () => {
    fc.assert(
      fc.property(edited(['7KQ-2M4-X', '7kq 2m4 x', '7KQ-2M4-X-inch', '7KQ2M4X']), (typed) => {
        const read = orRefused(() => readVariant(typed), CommandError);
        if (read) {
          const printed = printedVariant(read.code, read.units ?? 'mm', { units: 'mm' });
          expect({ units: 'mm', ...readVariant(printed) }).toEqual({ units: 'mm', ...read });
        }
      }),
      RUNS,
    );
  });

  it.each([
    ['a length', parseLength, ['0.8 mm', '1/32in', '1 31/32 in', '0,8', '-3e-2 mm']],
    ['an angle', parseAngle, ['5.625', '5d37m30s', '5°37′30″', '-90']],
  ] as const)('%s', (_, read, good) => {
    fc.assert(
      fc.property(edited(good), (typed) => {
        const value = read(typed);
        if (value === undefined) return;
        expect(value).toSatisfy(Number.isFinite);
        if (!String(value).includes('e')) expect(read(String(value))).toBe(value + 0); // −0 is 0
      }),
      RUNS,
    );
  });

  it('a fraction', () => {
    fc.assert(
      fc.property(edited(['5/7', '12', '7.5', '1000000/3']), (typed) => {
        const read = parseFraction(typed);
        if (read)
          expect([read.numerator, read.denominator].every(Number.isSafeInteger) && read.denominator > 0).toBe(
            true,
          );
      }),
      RUNS,
    );
  });

  it('a formula', () => {
    const good = ['d = m*(z + 2.76)', 'sqrt(h*(D - h))', 'asind(3/12)/2', 'round(a, 2)^2', 'max(a, b)'];
    const scope = { m: 0.8, z: 60, h: 2, D: 24, a: 1.5, b: -2 };
    fc.assert(
      fc.property(edited(good), (typed) => {
        const value = orRefused(() => evaluateFormula(typed, scope), FormulaError);
        if (value !== undefined) expect(value).toSatisfy(Number.isFinite);
      }),
      RUNS,
    );
  });

  it('the words of a command', async () => {
    const words = fc.tuple(
      fc.constantFrom<readonly string[]>(
        ['make', 'no-such-lesson', '--only', 'templates', '--printer-scale'],
        ['make', 'no-such-lesson', '--shard'],
        ['make', 'no-such-lesson', '--variant'],
        ['make', 'no-such-lesson', '--only'],
        ['make', 'no-such-lesson', '--learners'],
        ['work', 'wheel.blank', 'module=0.8'],
        ['work', 'train.find', 'stages=2'],
        ['list', 'calculations'],
        ['check', 'no-such-lesson'],
        ['verify'],
      ),
      edited([
        'X=0.998,Y=1.001',
        '3/8',
        'teeth=60',
        'ratio=5/7',
        'sheets',
        'class.csv',
        '--json',
        'wheels=60,8',
      ]),
    );
    await fc.assert(
      fc.asyncProperty(words, async ([before, last]) => {
        fc.pre(!last.includes('\0')); // no system hands such a word on
        const { code, out, err } = await benchleaf(...before, last);
        expect([0, 1, 2]).toContain(code);
        expect(code === 0 ? out : err).not.toBe('');
        expect(err).not.toMatch(/\n\s+at |TypeError|RangeError|undefined|\[object/);
      }),
      { numRuns: Math.ceil(RUNS.numRuns / 4) },
    );
  });

  it('a packing list', () => {
    const folder = mkdtempSync(join(tmpdir(), 'benchleaf-fuzz-'));
    const shard = { number: 1, of: 1 };
    const name = packingListName(shard);
    const good = packingListText({
      format: 'benchleaf-packing-list-1',
      set: 'a'.repeat(64),
      release: '0.1.0',
      course: { name: 'larkfield', title: 'The Larkfield timepiece', club: 'Harrow Lane' },
      options: { paper: 'a4', print: 'plain', only: ['key'] },
      madeFrom: [],
      shard,
      documents: [{ name: 'key.json', kind: 'key', size: 12, sha256: 'b'.repeat(64) }],
    });
    writeFileSync(join(folder, name), good);
    const right = readPackingList(folder, name);
    fc.assert(
      fc.property(edited([good]), (text) => {
        writeFileSync(join(folder, name), text);
        const read = orRefused(() => readPackingList(folder, name), ContentError);
        if (read) expect(read).toEqual(right);
      }),
      RUNS,
    );
    rmSync(folder, { recursive: true });
  });
});
