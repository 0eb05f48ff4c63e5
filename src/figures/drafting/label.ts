import { advances } from './text-widths.js';

export type Weight = keyof typeof advances;

/** A stretch of a label, upright or set low as a subscript. */
export interface Span {
  readonly text: string;
  readonly low: boolean;
}

/** Size of a subscript, and how far it drops, as shares of the font size. */
export const SUBSCRIPT = { size: 0.72, drop: 0.18 } as const;

/** Reach of the letters above and below their line, as shares of the font size (Source Sans 3). */
export const REACH = { ascent: 0.72, capital: 0.66, descent: 0.22 } as const;

/** Parts a label at `_`: what follows it, up to the next space or comma, stands low, as in `d_a = 50.21 mm`. */
export function spans(label: string): Span[] {
  return label
    .split(/(_\w+)/)
    .filter((part) => part !== '')
    .map((part) => (part.startsWith('_') ? { text: part.slice(1), low: true } : { text: part, low: false }));
}

/**
 * Width of a label, mm at a font size in mm, from the font's own advance widths.
 *
 * @throws {Error} for a character the figures' font has no glyph for
 */
export function labelWidth(label: string, size: number, weight: Weight): number {
  return spans(label).reduce(
    (sum, { text, low }) => sum + textWidth(text, weight) * size * (low ? SUBSCRIPT.size : 1),
    0,
  );
}

function textWidth(text: string, weight: Weight): number {
  const table: Readonly<Record<string, number>> = advances[weight];
  let width = 0;
  for (const character of text) {
    const advance = table[character];
    if (advance === undefined) throw new Error(`no glyph for ${JSON.stringify(character)} in a figure label`);
    width += advance;
  }
  return width / 1000;
}
