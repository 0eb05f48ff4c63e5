import { arrow } from '../../drafting/arrow.js';
import { hatch } from '../../drafting/hatch.js';
import { point } from '../../drafting/point.js';
import type { Pen } from '../../pen.js';
import type { Arbor, Part } from './arbors.js';

/** Heights of what is seen from the side, mm on paper; only what lies across the arbors has a scale. */
export const HEIGHT = { wheel: 2, pinion: 6, step: 10, plate: 3, room: 6 } as const;

/** The two plates, cut through; the lower one begins at 0. */
export function drawPlates(pen: Pen, left: number, right: number, top: number): void {
  for (const [upper, lower] of [
    [top - HEIGHT.plate, top],
    [0, HEIGHT.plate],
  ] as const) {
    const corners = [point(left, upper), point(right, upper), point(right, lower), point(left, lower)];
    hatch(pen, [corners], { spacing: 1.6 });
    pen.polygon('outline', corners);
  }
}

/** A wheel or pinion edge on, round its arbor. */
export function drawBox(
  pen: Pen,
  x: number,
  level: number,
  { radius }: Part,
  height: number,
  fill: 'paper' | 'ink' = 'paper',
): void {
  const box = { left: x - radius, right: x + radius, top: level - height / 2, bottom: level + height / 2 };
  pen.rectangle('outline', box, fill);
}

/** The drive goes up an arbor from its pinion to its wheel. */
export function drawClimb(pen: Pen, { x, pinion }: Arbor, from: number, to: number): void {
  const beside = x + Math.max(1.6, Math.min(pinion?.radius ?? 0, 3));
  arrow(pen, point(beside, from - HEIGHT.pinion / 2 - 0.6), point(beside, to + HEIGHT.wheel / 2 + 0.6));
}
