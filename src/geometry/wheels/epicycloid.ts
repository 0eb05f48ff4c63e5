import { type Point, polar } from '../curves/point.js';

/** The face of a cycloidal wheel tooth: the place traced after the generating circle has rolled so far. */
export interface Face {
  /** Place after rolling through an angle about the wheel's centre, radians; the face starts at (pitch radius, 0). */
  readonly at: (roll: number) => Point;
  /** Roll at which two faces, half a circular pitch apart, meet on the tooth's centre line. */
  readonly tipRoll: number;
  /** Polar angle of the tooth's centre line from the start of the face, radians. */
  readonly halfTooth: number;
  /** Roll at which the face reaches a radius about the wheel's centre; at least 0, at most the tip's. */
  readonly rollAt: (radius: number) => number;
}

/**
 * The epicycloid that a wheel's tooth face follows. The generating circle rolls outside the wheel's pitch circle and
 * has half the pinion's pitch diameter, so that the pinion's flanks are radial lines. The tooth is half a circular
 * pitch thick.
 *
 * The meeting place is found by bisection on the roll: the traced point's polar angle grows steadily from 0, and is
 * wanted at a quarter of the angular pitch, pi/(2z).
 *
 * @param teeth wheel teeth, z
 * @param leaves pinion leaves, n; not more than z
 * @param module mm; lengths come out in its unit
 */
export function wheelFace(teeth: number, leaves: number, module = 1): Face {
  const pitchRadius = (module * teeth) / 2;
  const roller = (module * leaves) / 4;
  const centre = pitchRadius + roller;
  const at = (roll: number): Point => {
    const arm = polar(centre, roll);
    const spoke = polar(roller, (centre * roll) / roller);
    return { x: arm.x - spoke.x, y: arm.y - spoke.y };
  };
  const halfTooth = Math.PI / (2 * teeth);
  let low = 0;
  let high = (Math.PI * roller) / pitchRadius;
  for (let step = 0; step < 200 && high - low > Number.EPSILON; step++) {
    const middle = (low + high) / 2;
    const { x, y } = at(middle);
    if (Math.atan2(y, x) < halfTooth) low = middle;
    else high = middle;
  }
  const tipRoll = (low + high) / 2;
  // The traced point, the generating circle's centre and the wheel's centre make a triangle.
  const rollAt = (radius: number): number => {
    const cosine = (centre ** 2 + roller ** 2 - radius ** 2) / (2 * centre * roller);
    return Math.min(tipRoll, (roller / pitchRadius) * Math.acos(Math.min(1, Math.max(-1, cosine))));
  };
  return { at, tipRoll, halfTooth, rollAt };
}

/**
 * Addendum of a cycloidal wheel tooth in modules, before any shortening: the height above the pitch circle at
 * which its faces meet.
 *
 * @param teeth wheel teeth, z
 * @param leaves pinion leaves, n; not more than z
 * @returns dimensionless, times the module
 */
export function theoreticalAddendum(teeth: number, leaves: number): number {
  const face = wheelFace(teeth, leaves);
  const { x, y } = face.at(face.tipRoll);
  return Math.hypot(x, y) - teeth / 2;
}
