import { type Point, polar } from '../../geometry/curves/point.js';
import type { Shape } from './template.js';

/** A circle about the origin, or about a place. */
export const circle = (diameter: number, middle: Point = { x: 0, y: 0 }): Shape => ({
  middle,
  radius: diameter / 2,
});

/** A straight stroke out from the origin, at an angle clockwise from the top. */
export function spoke(from: number, to: number, degrees: number): Shape {
  const angle = ((90 - degrees) * Math.PI) / 180;
  return { start: polar(from, angle), segments: [{ to: polar(to, angle) }] };
}

/** Straight lines from place to place. */
export const stroke = (start: Point, ...places: readonly Point[]): Shape => ({
  start,
  segments: places.map((to) => ({ to })),
});
