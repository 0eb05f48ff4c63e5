/** Less than this share of the largest pass is dust of rounding, not a pass. */
const DUST = 1e-9;

/** Passes laid one on another until they reach a depth; the count. */
export function passesByLaying(depth: number, largest: number): number {
  let count = 0;
  while (count * largest < depth - DUST * largest) count++;
  return count;
}
