import type { LabelOptions, Pen } from '../pen.js';
import { arrowhead, arrowLength } from './arrow.js';
import { isFree } from './clear.js';
import { OVERRUN, STAND_OFF } from './dimension.js';
import { along, distance, type Point, point } from './point.js';

/** A unit step to the left hand of somebody who walks from one place to another on the paper. */
export function leftHand(from: Point, to: Point): Point {
  const length = distance(from, to);
  return point((to.y - from.y) / length, -(to.x - from.x) / length);
}

/** Where the middle of a label comes so that its room lies wholly beyond a place, in a direction of length one. */
function middleBeyond(
  { width, height }: { width: number; height: number },
  at: Point,
  way: Point,
  white: number,
) {
  const reach = white + (width / 2) * Math.abs(way.x) + (height / 2) * Math.abs(way.y);
  return point(at.x + way.x * reach, at.y + way.y * reach);
}

/**
 * Writes a label wholly beyond a place, with white between: at the first of some places and in the first of some
 * directions (each of length one) where nothing stands yet, or else at the first of all.
 */
export function textBeyond(
  pen: Pen,
  label: string | readonly string[],
  at: Point | readonly Point[],
  ways: Point | readonly Point[],
  white: number,
  options: LabelOptions = {},
): void {
  const size = pen.textSize(label, options);
  const middles = [at]
    .flat()
    .flatMap((place) => [ways].flat().map((way) => middleBeyond(size, place, way, white)));
  const free = middles.find(({ x, y }) =>
    isFree(pen, {
      left: x - size.width / 2,
      right: x + size.width / 2,
      top: y - size.height / 2,
      bottom: y + size.height / 2,
    }),
  );
  const place = free ?? middles[0];
  if (place) pen.text(label, place, options);
}

/** Shares of a dimension line at which its label may stand. */
const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8];

/**
 * Dimensions a slanting length on a line beside it, so far to the left hand of the way from one end to the other.
 *
 * @param drops how far each end of the part lies short of the places given, on the right hand
 */
export function alignedDimension(
  pen: Pen,
  how: { from: Point; to: Point; aside: number; label: string; drops?: readonly [number, number] },
): void {
  const { from, to, aside, label, drops = [0, 0] } = how;
  const out = leftHand(from, to);
  const beyond = (place: Point, by: number): Point => point(place.x + out.x * by, place.y + out.y * by);
  for (const [i, end] of [from, to].entries())
    pen.line('dimension', beyond(end, STAND_OFF - (drops[i] ?? 0)), beyond(end, aside + OVERRUN));
  const [a, b] = [beyond(from, aside), beyond(to, aside)];
  pen.line('dimension', a, b);
  if (distance(a, b) > 2.6 * arrowLength(pen)) {
    arrowhead(pen, a, b);
    arrowhead(pen, b, a);
  }
  const places = SHARES.map((share) => along(a, b, share));
  textBeyond(pen, label, places, out, 0.3 * pen.style.labelSize);
}
