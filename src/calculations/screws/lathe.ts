import { InputError } from '../../diagnostics/errors.js';
import { type Fraction, fraction, times } from '../../geometry/fractions.js';
import { gearRatio, type Threads } from '../../geometry/screws/lead.js';
import type { Told } from '../../handbook/screws/gear-trial.js';
import { exact, type Quantity } from '../quantity.js';
import { decimals } from '../working.js';

const MEASURED = /^(?<number>.*?)\s*(?<unit>mm|in|"|″)$/i;

/** One inch in mm, exactly. */
const INCH = fraction(127, 5);

/** A length above 0 and up to so many mm, exactly; a string may carry a unit, and inches are 25.4 mm exactly. */
export function exactLength(name: string, most: number): Quantity<Fraction> {
  const plain = exact(name, 'mm', most);
  return {
    ...plain,
    accepts: `a length above 0 and up to ${most} mm, such as 0.8, 0.8mm, 1/32in or 14/11`,
    read: (raw) => {
      const { number, unit } = (typeof raw === 'string' && MEASURED.exec(raw.trim())?.groups) || {};
      if (number === undefined) return plain.read(raw);
      const value = plain.read(number.replace(',', '.'));
      if (value === undefined || unit?.toLowerCase() === 'mm') return value;
      return value.numerator * 127 <= Number.MAX_SAFE_INTEGER &&
        value.denominator * 5 <= Number.MAX_SAFE_INTEGER
        ? plain.read(times(value, INCH))
        : undefined;
    },
  };
}

/** What the lathe is to cut, and with what. */
export interface LatheGiven {
  readonly pitch?: Fraction | undefined;
  readonly tpi?: Fraction | undefined;
  readonly leadPitch?: Fraction | undefined;
  readonly leadTpi?: Fraction | undefined;
  readonly wheels: readonly number[];
  readonly tolerancePpm: number;
}

/** The thread to cut. @throws {InputError} unless exactly one of pitch and tpi is given */
export const cutOf = (g: LatheGiven): Threads => threads(['pitch', 'tpi'], g.pitch, g.tpi);

/** The lead screw. @throws {InputError} unless exactly one of leadPitch and leadTpi is given */
export const leadOf = (g: LatheGiven): Threads => threads(['leadPitch', 'leadTpi'], g.leadPitch, g.leadTpi);

function threads(keys: readonly [string, string], pitch?: Fraction, tpi?: Fraction): Threads {
  if (pitch && tpi) throw new InputError(keys[1], asWritten(tpi), `${keys[0]} or ${keys[1]}, not both`);
  if (pitch) return { pitch };
  if (tpi) return { tpi };
  throw new InputError(keys[0], undefined, `${keys[0]} in mm, or ${keys[1]} in threads per inch`);
}

/** A thread as the handbook is told it. */
export const toldOf = (thread: Threads): Told =>
  'pitch' in thread ? { ...thread.pitch, perInch: false } : { ...thread.tpi, perInch: true };

/** `12`, `40/127`. */
export const inFigures = ({ numerator, denominator }: Fraction): string =>
  denominator === 1 ? `${numerator}` : `${numerator}/${denominator}`;

/** A pitch or a count of threads as it is written: `11.5`, `2.25`; a fraction where no decimal of four places is it. */
export function asWritten(exactly: Fraction): string {
  const { numerator, denominator } = exactly;
  return 10_000 % denominator === 0 ? decimals(numerator / denominator, 4) : inFigures(exactly);
}

/** Whole numbers beyond this could not be multiplied out exactly. */
const LARGEST = 10_000_000;

/** @throws {InputError} when a thread is missing or told twice, or their ratio needs too many figures */
export function refuseUntidy(g: LatheGiven): void {
  const cut = cutOf(g);
  if (isTidy(cut, leadOf(g))) return;
  const [key, value] = 'pitch' in cut ? (['pitch', cut.pitch] as const) : (['tpi', cut.tpi] as const);
  throw new InputError(
    key,
    inFigures(value),
    'a pitch and a lead of fewer figures, such as 1.411 or 5/64: drivers over driven would take more than seven',
  );
}

function isTidy(cut: Threads, lead: Threads): boolean {
  try {
    const { numerator, denominator } = gearRatio(cut, lead);
    return numerator <= LARGEST && denominator <= LARGEST;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}
