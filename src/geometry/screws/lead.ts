import { type Fraction, fraction, inverse, times } from '../fractions.js';

/** One inch in mm, exactly. */
const INCH = fraction(127, 5);

/** A pitch in mm, or so many threads to the inch. */
export type Threads = { readonly pitch: Fraction } | { readonly tpi: Fraction };

/** Pitch in mm, exactly. @throws {RangeError} when it is no fraction a double can hold */
export const pitchOf = (threads: Threads): Fraction =>
  'pitch' in threads ? threads.pitch : times(INCH, inverse(threads.tpi));

/** Drivers over driven for a pitch on a lead screw, exactly. @throws {RangeError} as `pitchOf` */
export const gearRatio = (cut: Threads, lead: Threads): Fraction =>
  times(pitchOf(cut), inverse(pitchOf(lead)));
