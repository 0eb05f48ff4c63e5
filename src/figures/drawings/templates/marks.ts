import { onBearing, type Point, point } from '../../drafting/point.js';
import type { Pen } from '../../pen.js';

/** A cross of unbroken lines, by which a place is found with a punch. */
export function centreMark(pen: Pen, at: Point, arm: number): void {
  pen.line('dimension', point(at.x - arm, at.y), point(at.x + arm, at.y));
  pen.line('dimension', point(at.x, at.y - arm), point(at.x, at.y + arm));
}

/** A small solid triangle that points down at a place: where a part begins, and which way up it is. */
export function pointer(pen: Pen, at: Point): void {
  pen.solid([at, point(at.x + 1, at.y - 2.2), point(at.x - 1, at.y - 2.2)]);
}

/** Graduations round a centre: one for each of so many parts, every fifth and tenth longer, outwards. */
export function graduations(
  pen: Pen,
  how: { centre: Point; radius: number; parts: number; reach: readonly [number, number, number] },
): void {
  const { centre, radius, parts, reach } = how;
  for (let at = 0; at < parts; at++) {
    const long = at % 10 === 0 ? 2 : at % 5 === 0 ? 1 : 0;
    const bearing = (2 * Math.PI * at) / parts;
    pen.line(
      long === 0 ? 'dimension' : 'fine',
      onBearing(radius, bearing, centre),
      onBearing(radius + reach[long], bearing, centre),
    );
  }
}

/** Numbers round a centre, level, each wholly outside a radius, or inside it; the room they take across the radius. */
export function numbersRound(
  pen: Pen,
  how: { radius: number; side: 'outside' | 'inside'; labels: ReadonlyMap<number, string> },
): void {
  const { radius, side, labels } = how;
  const white = 0.3 * pen.style.labelSize;
  for (const [bearing, label] of labels) {
    const { width, height } = pen.textSize(label);
    const reach = (width * Math.abs(Math.sin(bearing)) + height * Math.abs(Math.cos(bearing))) / 2 + white;
    pen.text(label, onBearing(side === 'outside' ? radius + reach : radius - reach, bearing));
  }
}

/** The finest of some steps at which labels round a circle keep apart. */
export function stepFor(
  pen: Pen,
  how: { radius: number; parts: number; widest: string; steps: readonly number[] },
): number {
  const { radius, parts, widest, steps } = how;
  const { width, height } = pen.textSize(widest);
  const room = Math.hypot(width, height) + 0.4 * pen.style.labelSize;
  return steps.find((step) => 2 * radius * Math.sin(Math.PI / (parts / step)) >= room) ?? parts;
}
