import type { Point } from '../curves/point.js';

/** One degree in radians. */
export const DEGREE = Math.PI / 180;

/** Angle at a corner between the directions to two places, degrees from 0 to 180. */
export function angleBetween(corner: Point, first: Point, second: Point): number {
  const [ax, ay] = [first.x - corner.x, first.y - corner.y];
  const [bx, by] = [second.x - corner.x, second.y - corner.y];
  return Math.atan2(Math.abs(ax * by - ay * bx), ax * bx + ay * by) / DEGREE;
}
