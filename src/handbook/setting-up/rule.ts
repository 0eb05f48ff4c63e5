/** Millionths of a millimetre in a sixty-fourth of an inch: 25.4 mm by the agreement of 1959, shared by 64. */
const LINE = 396_875;

/**
 * Lines of a rule in sixty-fourths, laid off one by one until one is past the place; the nearer of the last two.
 *
 * @param mm up to some metres
 */
export function linesTo(mm: number): { readonly count: number; readonly over: number } {
  const place = Math.round(mm * 1e9) / 1e3;
  let count = 0;
  while (count * LINE < place) count++;
  const before = place - (count - 1) * LINE;
  if (count > 0 && before < count * LINE - place) count--;
  return { count, over: (count * LINE - place) / 1e6 };
}
