import { fitArcs } from '../curves/fit-arcs.js';
import { arcFrom, joined, mirroredPath, type Path, reversed, turnedPath } from '../curves/path.js';
import { type Point, turned } from '../curves/point.js';
import { toothSide, wheelFlanks } from './flank.js';
import { rackRoot } from './root.js';

/** How far the outline may lie from the true curve, unless told otherwise, mm. */
const TOLERANCE = 0.002;

/**
 * A whole involute wheel as the basic rack cuts it: involute flanks, the rack's trochoid at the root, undercut where
 * the count is small. One tooth is fitted, then turned round; a tooth stands on the x axis.
 *
 * @param teeth 5 to 1000
 * @param module mm
 * @param pressureAngle radians, 10° to 30°
 * @param tolerance largest distance from the true curve, mm
 * @returns a closed outline, anticlockwise about the origin
 */
export function involuteOutline(
  teeth: number,
  module: number,
  pressureAngle: number,
  tolerance = TOLERANCE,
): Path {
  const tooth = involuteTooth(teeth, module, pressureAngle, tolerance);
  const turns = Array.from({ length: teeth }, (_, i) => turnedPath(tooth, (2 * Math.PI * i) / teeth));
  return { start: tooth.start, segments: turns.flatMap(({ segments }) => segments) };
}

/**
 * One tooth and the land of the space after it, anticlockwise from where the root circle ends before the tooth.
 *
 * @param teeth, module, pressureAngle, tolerance as for `involuteOutline`
 */
export function involuteTooth(
  teeth: number,
  module: number,
  pressureAngle: number,
  tolerance = TOLERANCE,
): Path {
  const root = rackRoot(teeth, module, pressureAngle);
  const flanks = wheelFlanks(teeth, module, pressureAngle);
  // The root is known by the middle of its space; here it lies below a tooth.
  const halfPitch = Math.PI / teeth;
  const trochoid = (slant: number): Point => turned(root.at(slant), -halfPitch);
  const flank = (roll: number): Point => mirror(toothSide(flanks, roll));
  const rising = joined(
    fitArcs(trochoid, 0, root.meets, tolerance),
    fitArcs(flank, flanks.from, flanks.to, tolerance),
  );
  const falling = reversed(mirroredPath(rising));
  const top = landTo(flank(flanks.to), falling.start);
  const land = landTo(mirror(trochoid(0)), turned(trochoid(0), 2 * halfPitch));
  return joined(rising, top, falling, land);
}

const mirror = ({ x, y }: Point): Point => ({ x, y: -y });

/** The arc about the wheel's centre from one place to another; none where they are one. */
function landTo(from: Point, to: Point): Path {
  const turn = Math.atan2(from.x * to.y - from.y * to.x, from.x * to.x + from.y * to.y);
  return { start: from, segments: turn > 1e-9 ? [{ ...arcFrom(from, { x: 0, y: 0 }, turn), to }] : [] };
}
