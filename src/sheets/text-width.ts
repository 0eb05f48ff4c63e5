import { advances } from '../figures/drafting/text-widths.js';

/** A letter that the table lacks is taken to be as wide as a wide one; share of the font size. */
const OTHER = 640;
/** Seen and sad, and what is written like them, are half as wide again. */
const BROAD = /[\u0633-\u0636\u069A-\u069E]/;
const BROADEST = 1010;
/** Accents, and what only tells how letters join or run. */
const NO_WIDTH = /[\p{Mn}\p{Cf}]/gu;

/** Width of a line in the sheets' sans-serif face, mm at a size in mm: enough to share out the room in a table. */
export function textWidth(text: string, size: number, weight: keyof typeof advances = 400): number {
  const table: Readonly<Record<string, number>> = advances[weight];
  const letters = text.normalize('NFD').replace(NO_WIDTH, '');
  const units = [...letters].reduce(
    (sum, letter) => sum + (table[letter] ?? (BROAD.test(letter) ? BROADEST : OTHER)),
    0,
  );
  return (units * size) / 1000;
}
