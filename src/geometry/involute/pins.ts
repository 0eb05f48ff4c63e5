import { distance, polar } from '../curves/point.js';
import { type Flanks, spaceSide } from './flank.js';

/** A pin in a tooth space, touching both sides; mm and radians. */
export interface Pin {
  readonly diameter: number;
  /** How far its middle stands from the wheel's. */
  readonly centre: number;
}

/**
 * The pin that touches the sides of a space where so much string is unwound: its middle lies where the normal of the
 * side, which is the string carried on, crosses the middle of the space.
 */
function pinTouchingAt(flanks: Flanks, roll: number): Pin {
  const touch = spaceSide(flanks, roll);
  const { teeth, halfToothAtBase } = flanks;
  // The string leaves the base circle at this angle, and points back along the tangent there.
  const leaves = Math.PI / teeth - halfToothAtBase + roll;
  const along = touch.y / Math.cos(leaves);
  const centre = touch.x + along * Math.sin(leaves);
  return { diameter: 2 * along, centre };
}

/** The pin of a diameter in a space, by bisection on where it touches; undefined when it touches no flank. */
export function pinInSpace(flanks: Flanks, diameter: number): Pin | undefined {
  const { least, most } = pinsThatServe(flanks);
  if (diameter < least || diameter > most) return undefined;
  const roll = firstRoll(flanks, (pin) => pin.diameter >= diameter);
  return { diameter, centre: pinTouchingAt(flanks, roll).centre };
}

/**
 * Diameters of pin that touch both flanks, above the root and not past the tip, clear of the bottom, and stand
 * proud of the tips so that a micrometer reaches them.
 */
export function pinsThatServe(flanks: Flanks): { readonly least: number; readonly most: number } {
  const clear = firstRoll(
    flanks,
    ({ diameter, centre }) =>
      centre - diameter / 2 >= flanks.rootRadius && centre + diameter / 2 >= flanks.tipRadius,
  );
  return { least: pinTouchingAt(flanks, clear).diameter, most: pinTouchingAt(flanks, flanks.to).diameter };
}

/** Where on the flank, from the root up, a pin first does something that every larger pin does too. */
function firstRoll(flanks: Flanks, does: (pin: Pin) => boolean): number {
  let [low, high] = [flanks.from, flanks.to];
  if (does(pinTouchingAt(flanks, low))) return low;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (does(pinTouchingAt(flanks, middle))) high = middle;
    else low = middle;
  }
  return high;
}

/**
 * Over two pins in spaces as nearly opposite as the count allows, mm: straight across for an even count, half a
 * tooth out of line for an odd one.
 */
export function overTwoPins(teeth: number, { diameter, centre }: Pin): number {
  const apart = (2 * Math.PI * Math.floor(teeth / 2)) / teeth;
  return distance(polar(centre, 0), polar(centre, apart)) + diameter;
}
