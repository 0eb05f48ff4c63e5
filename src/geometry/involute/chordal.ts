import { distance, polar } from '../curves/point.js';

/** A tooth as a gear-tooth vernier measures it, straight across and down from the tip; mm. */
export interface ChordalTooth {
  readonly chordalThickness: number;
  readonly chordalAddendum: number;
}

/**
 * The places where the flanks cross the pitch circle, straight from one to the other, and how far below the tip.
 *
 * @param radius of the circle, mm
 * @param halfAngle that half the tooth takes of it, radians
 * @param tipRadius mm
 */
export function chordalTooth(radius: number, halfAngle: number, tipRadius: number): ChordalTooth {
  const [left, right] = [polar(radius, halfAngle), polar(radius, -halfAngle)];
  return { chordalThickness: distance(left, right), chordalAddendum: tipRadius - left.x };
}
