import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Draws that are the same for the same seed on any machine. */
export interface Chance {
  /** A whole number from 0 to one less than the count. */
  below(count: number): number;
}

/** Chance from a seed in words. */
export function chanceFrom(seed: string): Chance {
  const generator = xoroshiro128plus(hash32(seed));
  return { below: (count) => uniformInt(generator, 0, count - 1) };
}

/** A 32-bit number from text: FNV-1a over its UTF-8 bytes, then mixed so that near texts lie far apart. */
export function hash32(text: string): number {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(text)) hash = Math.imul(hash ^ byte, 0x01000193);
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}
