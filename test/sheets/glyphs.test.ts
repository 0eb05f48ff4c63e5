import { describe, expect, it } from 'vitest';
import { FIGURES, faces, TEXT } from '../../src/sheets/faces.js';
import { covered } from '../../src/sheets/glyph-table.js';
import { demandGlyphs, missingGlyphs } from '../../src/sheets/glyphs.js';
import { commonCover, coverOf, textFaces } from './glyph-cover.js';

const codes = covered.split(' ').flatMap((range) => {
  const [from = 0, to = from] = range.split('-').map((code) => Number.parseInt(code, 16));
  return Array.from({ length: to - from + 1 }, (_, i) => from + i);
});

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
