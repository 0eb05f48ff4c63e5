import { InputError } from '../../diagnostics/errors.js';
import { product } from '../../geometry/trains/ratio.js';
import { counts, whole } from '../quantity.js';

/** Most pairs of a train, and the counts that a wheel or a pinion may have; a worm counts as one leaf. */
export const LONGEST = 8;
export const WHEEL = [2, 1000] as const;
export const PINION = [1, 1000] as const;

export const wheels = counts('wheels that drive, in order', ...WHEEL, LONGEST);
export const pinions = counts('pinions that they drive, in order', ...PINION, LONGEST);
export const escapeTeeth = whole('E', 'teeth of the escape wheel', 4, 400);

/** The two products of a train, under the line and over it. */
export const products = {
  wheelProduct: { symbol: 'Z', unit: '', name: 'wheels multiplied' },
  pinionProduct: { symbol: 'N', unit: '', name: 'pinions multiplied' },
};

/** @throws {InputError} unless every wheel has its pinion */
export function refuseOddOnes(g: {
  readonly wheels: readonly unknown[];
  readonly pinions: readonly unknown[];
}) {
  if (g.pinions.length !== g.wheels.length)
    throw new InputError('pinions', g.pinions, `as many as there are wheels, ${g.wheels.length}`);
}

/** @throws {InputError} when counts multiply to more than can be worked exactly; `by` multiplies with them */
export function refuseTooLarge(key: string, given: readonly number[], by = 1): void {
  if (!Number.isSafeInteger(by * product(given)))
    throw new InputError(key, given, 'counts that multiply to less than 9 000 000 000 000 000 in all');
}

/** `60 × 56 = 3360`; a single count alone. */
export function multiplied(given: readonly number[]): string {
  return given.length > 1 ? `${given.join(' × ')} = ${product(given)}` : `${product(given)}`;
}
