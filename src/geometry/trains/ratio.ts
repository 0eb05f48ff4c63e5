import { type Fraction, fraction, times } from '../fractions.js';

/** Product of whole numbers, 1 for none; the caller keeps it below 2^53. */
export const product = (counts: readonly number[]): number => counts.reduce((so, count) => so * count, 1);

/**
 * Turns of the last pinion for one turn of the first wheel, exact and in lowest terms.
 *
 * @throws {RangeError} when a product is too large to be held exactly
 */
export function trainRatio(wheels: readonly number[], pinions: readonly number[]): Fraction {
  return fraction(product(wheels), product(pinions));
}

/** Beats for one turn of the first wheel: each tooth of the escape wheel passes in two beats, tick and tock. */
export function beatsPerTurn(ratio: Fraction, escapeTeeth: number): Fraction {
  return times(ratio, fraction(2 * escapeTeeth));
}

/**
 * The count that a train wants in one place so that its first wheel, which turns once an hour, gives so many beats;
 * a whole number only if the denominator comes to 1.
 *
 * @param known the wheels and the pinions that are known
 * @throws {RangeError} when a product is too large to be held exactly
 */
export function missingCount(
  place: 'wheel' | 'pinion',
  beats: number,
  escapeTeeth: number,
  known: { readonly wheels: readonly number[]; readonly pinions: readonly number[] },
): Fraction {
  const driving = 2 * escapeTeeth * product(known.wheels);
  const driven = beats * product(known.pinions);
  return place === 'wheel' ? fraction(driven, driving) : fraction(driving, driven);
}
