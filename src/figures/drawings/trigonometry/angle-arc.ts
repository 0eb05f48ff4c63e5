import { arrowhead, arrowLength } from '../../drafting/arrow.js';
import { onBearing, type Point, point } from '../../drafting/point.js';
import type { Pen } from '../../pen.js';

/** The bearing in which one place lies from another, as figures count them: clockwise from the top. */
export const bearingOf = (from: Point, to: Point): number => Math.atan2(to.x - from.x, from.y - to.y);

/** From one bearing to another the short way round, radians; clockwise above 0. */
const turnBetween = (from: number, to: number): number => {
  const turn = (to - from) % (2 * Math.PI);
  return turn > Math.PI ? turn - 2 * Math.PI : turn <= -Math.PI ? turn + 2 * Math.PI : turn;
};

/** Marks the angle at a corner between two places: a small arc, or a square where it is right. */
export function markAngle(pen: Pen, at: Point, p: Point, q: Point, radius: number): void {
  const from = bearingOf(at, p);
  const turn = turnBetween(from, bearingOf(at, q));
  if (Math.abs(Math.abs(turn) - Math.PI / 2) < 1e-9) {
    const [one, two] = [onBearing(0.7 * radius, from, at), onBearing(0.7 * radius, from + turn, at)];
    pen.line('fine', one, point(one.x + two.x - at.x, one.y + two.y - at.y), two);
  } else {
    pen.stroke('fine', (trace) => trace.arc(at, radius, from, from + turn));
  }
}

/**
 * Names the angle at a corner between two places: an arc, and beyond it the letter, as near the corner as it stands
 * clear of both sides.
 *
 * @param least smallest radius of the arc, mm
 */
export function nameAngle(pen: Pen, letter: string, at: Point, p: Point, q: Point, least: number): void {
  const { width, height } = pen.textSize(letter, { weight: 600 });
  const from = bearingOf(at, p);
  const half = turnBetween(from, bearingOf(at, q)) / 2;
  const past = Math.hypot(width, height) / 2 + 0.8;
  const clear = [from, from + 2 * half].map((side) => {
    const reach = (width / 2) * Math.abs(Math.cos(side)) + (height / 2) * Math.abs(Math.sin(side));
    return (reach + 0.8) / Math.sin(Math.min(Math.abs(half), Math.PI / 2));
  });
  const radius = Math.max(least, Math.max(...clear) - past);
  markAngle(pen, at, p, q, radius);
  pen.text(letter, onBearing(Math.max(radius + past, ...clear), from + half, at), { weight: 600 });
}

/** An arc about a centre between two bearings, as a dimension: an arrowhead at each end where there is room. */
export function dimensionArc(pen: Pen, centre: Point, radius: number, from: number, to: number): void {
  pen.stroke('dimension', (trace) => trace.arc(centre, radius, from, to));
  const length = arrowLength(pen);
  if (Math.abs(to - from) * radius < 2.6 * length) return;
  const back = ((length / radius) * (to - from)) / Math.abs(to - from);
  arrowhead(pen, onBearing(radius, from, centre), onBearing(radius, from + back, centre));
  arrowhead(pen, onBearing(radius, to, centre), onBearing(radius, to - back, centre));
}
