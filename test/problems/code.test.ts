import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CommandError } from '../../src/index.js';
import { codeFor, readCode } from '../../src/problems/code.js';

const texts = fc.string();

describe('variant codes', () => {
  it('read back as people type them', () => {
    fc.assert(
      fc.property(texts, (text) => {
        const code = codeFor(text);
        expect(code).toMatch(/^[0-9A-HJKMNP-TV-Z]{3}-[0-9A-HJKMNP-TV-Z]{3}-[0-9A-HJKMNP-TV-Z]$/);
        for (const typed of [
          code,
          code.toLowerCase(),
          code.replaceAll('-', ''),
          code.replaceAll('0', 'O'),
          code.replaceAll('1', 'l'),
        ])
          expect(readCode(typed)).toBe(code);
      }),
    );
  });

  it('are refused when one symbol is wrong', () => {
    fc.assert(
      fc.property(
        texts,
        fc.integer({ min: 0, max: 5 }),
        fc.integer({ min: 1, max: 31 }),
        (text, place, by) => {
          const symbols = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
          const plain = [...codeFor(text).replaceAll('-', '')];
          plain[place] = symbols[(symbols.indexOf(plain[place] ?? '') + by) % 32] ?? '';
          expect(() => readCode(plain.join(''))).toThrow(CommandError);
        },
      ),
    );
  });

  it('are refused when two neighbouring symbols are swapped', () => {
    fc.assert(
      fc.property(texts, fc.integer({ min: 0, max: 4 }), (text, place) => {
        const plain = [...codeFor(text).replaceAll('-', '')];
        const [a = '', b = ''] = plain.slice(place);
        fc.pre(a !== b);
        plain.splice(place, 2, b, a);
        expect(() => readCode(plain.join(''))).toThrow(CommandError);
      }),
    );
  });

  it.each(['', '7KQ', 'U00-000-0', '000-000-00', 'é', '000-000-5'])('refuses %j', (typed) =>
    expect(() => readCode(typed)).toThrow(/is not a variant code/),
  );
});
