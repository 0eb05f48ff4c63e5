/** The middle one of some numbers, the upper of two; 0 of none. */
export function median(values: readonly number[]): number {
  const rising = [...values].sort((a, b) => a - b);
  return rising[Math.floor(rising.length / 2)] ?? 0;
}
