import { arrowhead, arrowLength } from '../drafting/arrow.js';
import { onBearing, type Point, point } from '../drafting/point.js';
import type { Pen } from '../pen.js';
import { coarseness, type PlateLayout } from './index-plate-circles.js';

/** Radius of the hub the arms turn about, and width of an arm, mm on paper. */
const HUB = 4;
const ARM = 3.2;

/** Two arms that hold the pin's hole and the next `spaces` between their bevelled edges. */
export function drawArms(pen: Pen, { circle, radius, hole }: PlateLayout, spaces: number): void {
  const step = (2 * Math.PI) / circle;
  const hub = HUB * coarseness(pen);
  const end = radius + hole + 0.6;
  const touch = Math.asin((hole + 0.3) / radius);
  // Where nearly the whole circle is held the arms stand back to back: each takes at most half of what is left over.
  const free = 2 * Math.PI - spaces * step - 2 * touch;
  const arm = ARM * coarseness(pen);
  const widthAt = (r: number, most: number): number => Math.max(0.2, Math.min(most, (free * r) / 2 - 0.2));
  for (const [bearing, back] of [
    [-touch, -1],
    [spaces * step + touch, 1],
  ] as const) {
    const inner = onBearing(hub * 0.9, bearing);
    const outer = onBearing(end, bearing);
    const aside = (p: Point, by: number): Point => ({
      x: p.x + back * by * Math.cos(bearing),
      y: p.y + back * by * Math.sin(bearing),
    });
    const corners = [inner, outer, aside(outer, widthAt(end, arm * 0.7)), aside(inner, widthAt(hub, arm))];
    pen.polygon('outline', corners, 'paper');
  }
  pen.circle('outline', point(0, 0), hub, 'paper');
  pen.circle('outline', point(0, 0), hub * 0.4);
}

/** Which way the crank goes, inside the circles, from the pin towards its next hole. */
export function drawTurn(pen: Pen, layout: PlateLayout, share: number): void {
  const innermost = Math.min(layout.radius, ...layout.rings.map((ring) => ring.radius));
  const radius = (innermost + HUB * coarseness(pen)) / 2;
  const whole = 2 * Math.PI * share;
  // Between the arms where there is room to see it, else just past the second.
  const [from, to] = whole * radius > 4 * arrowLength(pen) ? [0.3, whole - 0.3] : [whole + 0.5, whole + 1.4];
  pen.stroke('fine', (trace) => trace.arc(point(0, 0), radius, from, to));
  const bend = Math.min((to - from) / 2, arrowLength(pen) / radius);
  arrowhead(pen, onBearing(radius, to), onBearing(radius, to - bend));
}
