const MM_PER_INCH = 25.4;
const PARTS = 64;

/** A length of mm in inches. */
export const inches = (mm: number): number => mm / MM_PER_INCH;

/** The sixty-fourths of an inch nearest to a length of mm, the larger of two as near, and what they are over it, mm. */
export function sixtyFourths(mm: number): { readonly count: number; readonly over: number } {
  // Twelve figures: half a line is half a line, whatever binary arithmetic leaves of it.
  const count = Math.round(Number(((mm * PARTS) / MM_PER_INCH).toPrecision(12)));
  return { count, over: (count * MM_PER_INCH) / PARTS - mm };
}
