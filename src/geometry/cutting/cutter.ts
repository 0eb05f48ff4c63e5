import {
  endOf,
  flattened,
  joined,
  mirroredPath,
  type Path,
  reversed,
  shifted,
  turnedPath,
} from '../curves/path.js';
import { distance, type Point } from '../curves/point.js';
import { halfSpace, rollAt, type Space, wallFace } from './space.js';

/** Both halves of a space, from the left rim down and up to the right; the origin moved to the middle of the tip. */
function whole(half: Path, space: Space): Path {
  const left = turnedPath(mirroredPath(half), Math.PI);
  return shifted(joined(reversed(left), half), { x: 0, y: -space.rootRadius });
}

/**
 * The form of a single-point cutter: the space it leaves, open at the rim. The origin is the middle of the tip, x
 * across the cutter, y from the tip towards the rim of the wheel.
 *
 * @param tolerance largest distance from the true curve, mm
 */
export const cutterForm = (space: Space, tolerance: number): Path =>
  whole(halfSpace(space, rollAt(space, space.rimRadius), tolerance), space);

/**
 * The same cutter as a polygon to cut with: its faces go on to where the teeth would be pointed, and then straight on,
 * so that it stands clear of any blank.
 *
 * @param reach height above the tip that the polygon has at least, mm
 * @param tolerance largest distance of the polygon from the true curve, mm
 */
export function cutterPolygon(space: Space, reach: number, tolerance: number): Point[] {
  const half = halfSpace(space, space.face.tipRoll, tolerance / 2);
  const end = endOf(half);
  const before = wallFace(space)(space.face.tipRoll * (1 - 1e-6));
  const rise = Math.max(reach - (end.y - space.rootRadius), 0) / (end.y - before.y);
  const top = { x: end.x + rise * (end.x - before.x), y: end.y + rise * (end.y - before.y) };
  const longer = distance(top, end) > 0 ? [...half.segments, { to: top }] : half.segments;
  return flattened(whole({ start: half.start, segments: longer }, space), tolerance / 2);
}
