import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileName } from '../../src/pack/file-name.js';

describe('fileName(one, place)', () => {
  it.each([
    ['Ada Brown', 7, '07-ada-brown'],
    ["Siân O'Neill", 12, '12-sian-oneill'],
    ['Łukasz Øster-Weiß', 103, '103-lukasz-oster-weiss'],
    ['İpek Æsa', 1, '01-ipek-aesa'],
    ['../../etc/passwd', 2, '02-etc-passwd'],
    ['CON', 3, '03-con'],
    ['李明', 4, '04-李明'],
    ['हिन्दी नाम', 5, '05-हिन्दी-नाम'],
    ['נֹעַם בֶּן־דָּוִד', 13, '13-נעם-בן-דוד'],
    ['مُحَمَّد آل الشيخ', 14, '14-محمد-آل-الشيخ'],
    ['علی\u200Cزاده، مریم', 15, '15-علی-زاده-مریم'],
    ['\u202Egpj.exe\u2066', 16, '16-gpj-exe'],
    ['???', 6, '06'],
    ['a'.repeat(80), 8, `08-${'a'.repeat(40)}`],
    [`${'b'.repeat(39)} c`, 9, `09-${'b'.repeat(39)}`],
  ])('%s', (name, place, expected) => expect(fileName({ name }, place)).toBe(expected));

  it('is safe whatever the name', () => {
    const name = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 80 }),
      fc.string({ unit: 'binary', maxLength: 80 }),
    );
    fc.assert(
      fc.property(name, fc.integer({ min: 1, max: 10_000 }), (text, place) => {
        const made = fileName({ name: text }, place);
        expect(made).toMatch(/^\d{2,5}(-[\p{L}\p{N}][\p{L}\p{N}\p{M}]*)*$/u);
        expect(Number.parseInt(made, 10)).toBe(place);
        expect(Buffer.byteLength(made)).toBeLessThanOrEqual(170);
        expect(made).toBe(made.normalize('NFC'));
      }),
      { numRuns: 2000 },
    );
  });

  it('is never the same for two places, even where capitals and accents are not told apart', () =>
    fc.assert(
      fc.property(fc.array(fc.string({ unit: 'grapheme', maxLength: 12 }), { maxLength: 120 }), (class_) => {
        const made = class_.map((name, index) => fileName({ name }, index + 1));
        const folded = made.map((one) => one.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase());
        expect(new Set(folded).size).toBe(class_.length);
      }),
    ));
});
