import { advances } from '../figures/drafting/text-widths.js';

/** A letter that the table lacks is taken to be as wide as a wide one; share of the font size. */
const OTHER = 640;

/** Width of a line in the sheets' sans-serif face, mm at a size in mm: enough to share out the room in a table. */
export function textWidth(text: string, size: number, weight: keyof typeof advances = 400): number {
  const table: Readonly<Record<string, number>> = advances[weight];
  const units = [...text].reduce((sum, letter) => sum + (table[letter] ?? OTHER), 0);
  return (units * size) / 1000;
}
