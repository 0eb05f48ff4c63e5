import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { labelWidth, REACH, SUBSCRIPT } from '../../../src/figures/drafting/label.js';
import { advances } from '../../../src/figures/drafting/text-widths.js';

interface Font {
  readonly unitsPerEm: number;
  readonly capHeight: number;
  readonly bbox: { minY: number; maxY: number };
  hasGlyphForCodePoint(code: number): boolean;
  glyphForCodePoint(code: number): { advanceWidth: number; bbox: { minY: number; maxY: number } };
  layout(text: string): { advanceWidth: number };
}

const require = createRequire(import.meta.url);
const fontkit = require('fontkit') as { openSync(path: string): Font };
const open = (weight: number): Font =>
  fontkit.openSync(
    require.resolve(`@fontsource/source-sans-3/files/source-sans-3-latin-${weight}-normal.woff2`),
  );

describe.each([400, 600] as const)('the widths of weight %i', (weight) => {
  const font = open(weight);

  it('are those of the font', () => {
    for (const [character, width] of Object.entries(advances[weight])) {
      const code = character.codePointAt(0) ?? 0;
      expect(font.hasGlyphForCodePoint(code), character).toBe(true);
      expect(font.glyphForCodePoint(code).advanceWidth, character).toBe(width);
    }
    expect(font.unitsPerEm).toBe(1000);
  });

  it('are never less than the font sets with its own kerning, and hardly more', () => {
    for (const label of [
      'pitch circle 48.00 mm',
      'slide travel 60.00 mm',
      'Taylor, AVATAR',
      '15 spaces = 16 holes',
    ]) {
      const set = font.layout(label).advanceWidth / 1000;
      expect(labelWidth(label, 1, weight)).toBeGreaterThanOrEqual(set - 1e-9);
      expect(labelWidth(label, 1, weight)).toBeLessThan(set * 1.06);
    }
  });

  it('go with letters that keep within the reach a label is given', () => {
    for (const character of 'abcdefghijklmnopqrstuvwxyzABCDEFGHIKLMNOPRSTUVWXYZ0123456789,.;') {
      const { minY, maxY } = font.glyphForCodePoint(character.codePointAt(0) ?? 0).bbox;
      expect(maxY / 1000, character).toBeLessThanOrEqual(REACH.ascent + 0.012);
      expect(-minY / 1000, character).toBeLessThanOrEqual(REACH.descent + 0.012);
    }
  });
});

describe('labelWidth', () => {
  it('sets a subscript small', () => {
    const plain = labelWidth('d', 10, 400);
    const low = labelWidth('a', 10, 400);
    expect(labelWidth('d_a', 10, 400)).toBeCloseTo(plain + SUBSCRIPT.size * low, 9);
  });

  it('throws for a character the font has not', () => {
    expect(() => labelWidth('⌀ 6', 2.8, 400)).toThrow('no glyph for "⌀"');
  });
});
