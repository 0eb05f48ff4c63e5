import { CommandError } from '../diagnostics/errors.js';
import type { UnitSystem } from '../units/format.js';
import { readCode } from './code.js';

/** What makes a sheet's numbers again, but for the lessons and the kit. */
export interface Variant {
  readonly code: string;
  /** None where they are the kit's own. */
  readonly units?: UnitSystem;
}

/** Symbols of a code, hyphens left out. */
const SYMBOLS = 7;
const WORDS: Readonly<Record<string, UnitSystem>> = { MM: 'mm', IN: 'inch', INCH: 'inch', INCHES: 'inch' };

/**
 * A variant as its sheet says it: the code, and the units where they are not the kit's own, for the numbers hang on
 * them: `7KQ-2M4-X-inch`. How large it is printed changes no number.
 */
export function printedVariant(code: string, units: UnitSystem, kit: { readonly units: UnitSystem }): string {
  return units === kit.units ? code : `${code}-${units}`;
}

/**
 * Reads what a sheet says of its variant, as people write it.
 *
 * @throws {CommandError} when it is none
 */
export function readVariant(typed: string): Variant {
  const symbols = typed.toUpperCase().replace(/[\s-]/g, '');
  const units = WORDS[symbols.slice(SYMBOLS)];
  return units ? { code: readCode(symbols.slice(0, SYMBOLS)), units } : { code: readCode(typed) };
}

/**
 * The units that an order is for, when its variant may say so too.
 *
 * @throws {CommandError} when the two differ
 */
export function agreedUnits(told: UnitSystem | undefined, { code, units }: Variant): UnitSystem | undefined {
  if (told !== undefined && units !== undefined && told !== units)
    throw new CommandError(`the variant ${code}-${units} is not in the units ${told}`, [
      'Leave --units out: the code says which.',
    ]);
  return told ?? units;
}
