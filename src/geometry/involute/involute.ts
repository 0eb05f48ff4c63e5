import type { Point } from '../curves/point.js';

/**
 * The involute function, tan a − a: the polar angle that an involute has run through where its pressure angle is a.
 *
 * @param angle radians, 0 to less than a quarter turn
 * @returns radians
 */
export function inv(angle: number): number {
  return Math.tan(angle) - angle;
}

/**
 * The end of a string unwound from the base circle, from (base radius, 0), anticlockwise.
 *
 * @param roll radians of string unwound, 0 or more; also the tangent of the pressure angle there
 */
export function involutePoint(baseRadius: number, roll: number): Point {
  const [cos, sin] = [Math.cos(roll), Math.sin(roll)];
  return { x: baseRadius * (cos + roll * sin), y: baseRadius * (sin - roll * cos) };
}

/** How much string is unwound where the involute reaches a radius, radians; 0 on the base circle or inside it. */
export function rollTo(baseRadius: number, radius: number): number {
  return Math.sqrt(Math.max(0, (radius / baseRadius) ** 2 - 1));
}
