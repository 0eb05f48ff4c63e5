import { describe, expect, it } from 'vitest';
import { covered } from '../../src/reading/glyph-table.js';
import { missingGlyphs } from '../../src/reading/glyphs.js';
import { FIGURES, faces, TEXT } from '../../src/sheets/faces.js';
import { demandGlyphs } from '../../src/sheets/glyphs.js';
import { charactersOf, codesIn, commonCover, coverOf, textFaces } from './glyph-cover.js';

const codes = codesIn(covered);

describe('the table of glyphs', () => {
  it('has just what all the faces have, read from the font files', () =>
    expect(codes).toEqual(commonCover()));

  it('is held against each text face: upright, slanted and semibold', () => {
    expect(textFaces).toHaveLength(5);
    for (const face of textFaces) {
      const cover = coverOf(face);
      for (const code of codes) expect(cover.has(code)).toBe(true);
    }
  });

  it('asks no face for what it lacks: signs and letters beside those of the text faces', () => {
    const beside = faces.filter(
      ({ family, file }) => (family === TEXT || family === FIGURES) && !file.name.startsWith('source-'),
    );
    expect(new Set(beside.map(({ file }) => file.name)).size).toBe(5);
    for (const { file, range } of beside) {
      const has = new Set(charactersOf(file.from));
      for (const code of codesIn(range ?? '')) expect(has.has(code)).toBe(true);
    }
  });

  it('lacks all that turns text round', () => {
    const turning = [0x61c, 0x200e, 0x200f, 0x202a, 0x202b, 0x202c, 0x202d, 0x202e].concat(
      [0x2066, 0x2067, 0x2068, 0x2069],
      [0x600, 0x605, 0x6dd],
    );
    expect(turning.filter((code) => codes.includes(code))).toEqual([]);
  });

  it('has every sign that lessons may use', () => {
    const signs = 'abcXYZ019×÷±°′″–—‘’“”½¼¾⅛→≤≥≈√π∠⌀−≠…·\u202F\u2009';
    expect(missingGlyphs(signs)).toEqual([]);
  });

  it.each([
    'Zoë Müller',
    'Łukasz Żółć',
    'Nguyễn Thị Hạnh',
    'Ελένη Παπαδοπούλου',
    'Юлия Щербакова',
    'Siân Ó Briain',
    'שרה בן־דָּוִד',
    'מוטי ג׳ורג׳',
    'فاطمة الزهراء',
    'مُحَمَّد عبدﷲ',
    'علی\u200Cزاده، گیتی',
    'پروین شہزاد ٹیپو',
  ])('prints the name %s', (name) => expect(missingGlyphs(name)).toEqual([]));

  it('takes an accent that stands apart with its letter', () =>
    expect(missingGlyphs('Zoe\u0308')).toEqual([]));

  it('names each character that is missing once', () =>
    expect(missingGlyphs('漢 a 漢 字 \u0007')).toEqual(['漢', '字', '\u0007']));

  it('refuses a sheet with such a name', () =>
    expect(() => demandGlyphs({ learner: ['Ann', '漢字'] })).toThrow(
      'text: "漢字" is not accepted; give text without “漢” (U+6F22), which no typeface here has',
    ));
});

describe('digits of formulas', () => {
  it('come from the text face, so that all digits of a page are alike', () => {
    const serif = faces.filter(({ family }) => family === 'KaTeX_Main' || family === 'KaTeX_Math');
    expect(serif.some(({ file }) => file.name.startsWith('source-serif-4-latin-400-normal'))).toBe(true);
    expect(serif.some(({ file }) => file.name.startsWith('source-serif-4-latin-400-italic'))).toBe(true);
  });

  it('only the text families are asked for by name elsewhere', () =>
    expect(new Set(textFaces.map(({ family }) => family))).toEqual(new Set([TEXT, FIGURES])));
});
