import { onBearing, point } from '../../drafting/point.js';
import type { Pen } from '../../pen.js';

/** Breadth of the ring and the bar against the ring’s radius. */
const BREADTH = 0.1;

const SLICES = 48;
/** Each half goes a little over the other, so that no line of white is left between. */
const LAP = 1.01;

/** A heavy ring about the origin with a bar across it, from the top left: what is in it must not be (ISO 3864). */
export function forbid(pen: Pen, radius: number): void {
  const inner = radius * (1 - BREADTH);
  const half = (radius * BREADTH) / 2;
  const reach = Math.sqrt(inner ** 2 - half ** 2) + 0.2;
  const bar = [point(-reach, -half), point(reach, -half), point(reach, half), point(-reach, half)];
  pen.solid(bar.map(({ x, y }) => point((x - y) * Math.SQRT1_2, (x + y) * Math.SQRT1_2)));
  for (const side of [0, Math.PI]) {
    const bearings = Array.from({ length: SLICES + 1 }, (_, i) => side + (Math.PI * i * LAP) / SLICES);
    const outside = bearings.map((bearing) => onBearing(radius, bearing));
    const inside = bearings.map((bearing) => onBearing(inner, bearing)).reverse();
    pen.solid([...outside, ...inside]);
  }
}
