import { type Arc, arcFrom, joined, type Path, reversed, throughPoints } from '../curves/path.js';
import type { Point } from '../curves/point.js';

/** How the sharp corner of a thread’s triangle is taken off. */
export interface Corner {
  /** Height taken off, mm. */
  readonly off: number;
  /** Whether an arc that touches both flanks ends it, in place of a flat. */
  readonly round: boolean;
}

/** A thread in section: a row of triangles with their corners taken off. */
export interface ThreadShape {
  /** mm, above 0 */
  readonly pitch: number;
  /** Angle between the flanks, degrees, above 0 and under 180. */
  readonly angle: number;
  readonly crest: Corner;
  readonly root: Corner;
}

const RADIANS = Math.PI / 180;

/** Height of the triangle before its corners are taken off, mm. */
export const sharpHeight = (pitch: number, angle: number): number =>
  pitch / 2 / Math.tan((angle / 2) * RADIANS);

/** Radius of the arc that touches both flanks and takes so much off the corner, mm. */
export function roundingRadius(off: number, angle: number): number {
  const sine = Math.sin((angle / 2) * RADIANS);
  return (off * sine) / (1 - sine);
}

/**
 * One groove of a thread in section, from the middle of a crest to the middle of the next, as flats, flanks and arcs.
 * x along the axis, 0 in the middle of the groove; y outwards, 0 half way up the triangle. Lengths mm.
 */
export function threadGroove(shape: ThreadShape): Path {
  const half = grooveSide(shape);
  return joined(reversed(flipped(half)), half);
}

/** From the bottom of the groove up the right flank to the middle of the crest. */
function grooveSide({ pitch, angle, crest, root }: ThreadShape): Path {
  const height = sharpHeight(pitch, angle);
  const foot = { x: 0, y: -height / 2 };
  const top = { x: pitch / 2, y: height / 2 };
  const lower = corner(foot, 1, root, angle);
  const upper = corner(top, -1, crest, angle);
  return joined(lower, reversed(upper));
}

/** From the middle of a corner, as taken off, to where the flank begins; `way` 1 up and right, -1 down and left. */
function corner(sharp: Point, way: 1 | -1, { off, round }: Corner, angle: number): Path {
  const half = (angle / 2) * RADIANS;
  const middle = { x: sharp.x, y: sharp.y + way * off };
  if (!round) return throughPoints([middle, { x: sharp.x + way * off * Math.tan(half), y: middle.y }]);
  const centre = { x: sharp.x, y: sharp.y + (way * roundingRadius(off, angle)) / Math.sin(half) };
  const arc: Arc = arcFrom(middle, centre, Math.PI / 2 - half);
  return { start: middle, segments: [arc] };
}

/** Mirrored in the middle of the groove. */
function flipped({ start, segments }: Path): Path {
  const flip = ({ x, y }: Point): Point => ({ x: -x, y });
  return {
    start: flip(start),
    segments: segments.map((segment) =>
      'centre' in segment
        ? { to: flip(segment.to), centre: flip(segment.centre), turn: -segment.turn }
        : { to: flip(segment.to) },
    ),
  };
}
