import { arcFrom, endOf, joined, mirroredPath, type Path, reversed, turnedPath } from '../curves/path.js';
import { distance, type Point, polar } from '../curves/point.js';

/** The bottom of a space: along the root circle, or one round from flank to flank that touches the root circle. */
export type RootForm = 'flat' | 'round';

/** How far an outline may lie from the true curve, unless told otherwise, mm. */
export const TOLERANCE = 0.002;

/** The foot of a tooth with radial flanks. */
export interface Foot {
  /** Angle from tooth to tooth, radians. */
  readonly pitch: number;
  /** Half the angle the tooth takes of the pitch circle, radians. */
  readonly halfTooth: number;
  readonly pitchRadius: number;
  readonly rootRadius: number;
  readonly root: RootForm;
}

/**
 * The radius at which a radial flank ends below.
 *
 * @throws {RangeError} when nothing of the flank is left: a root too shallow for its round, or at the centre
 */
export function flankFoot({ pitch, halfTooth, pitchRadius, rootRadius, root }: Foot): number {
  const halfSpace = pitch / 2 - halfTooth;
  const foot = root === 'flat' ? rootRadius : (rootRadius * Math.cos(halfSpace)) / (1 - Math.sin(halfSpace));
  if (!(rootRadius > 0 && foot <= pitchRadius)) throw new RangeError('the root leaves no flank');
  return foot;
}

/**
 * One tooth that stands on the x axis and the bottom of the space after it, anticlockwise from the tooth's first foot.
 *
 * @param rising its first side, from foot to tip; the other is its mirror image
 */
export function toothBetween(rising: Path, foot: Foot): Path {
  const falling = reversed(mirroredPath(rising));
  return joined(
    rising,
    arcTo(endOf(rising), falling.start, { x: 0, y: 0 }),
    falling,
    bottom(endOf(falling), foot),
  );
}

function bottom(from: Point, { pitch, halfTooth, rootRadius, root }: Foot): Path {
  const halfSpace = pitch / 2 - halfTooth;
  const to = polar(Math.hypot(from.x, from.y), pitch - halfTooth);
  if (root === 'flat') return arcTo(from, to, { x: 0, y: 0 });
  return arcTo(from, to, polar(rootRadius / (1 - Math.sin(halfSpace)), pitch / 2), -1);
}

/** The lesser arc between two places about a centre, anticlockwise unless told otherwise; none where they are one. */
function arcTo(from: Point, to: Point, centre: Point, sense: 1 | -1 = 1): Path {
  const [a, b] = [from, to].map(({ x, y }) => ({ x: x - centre.x, y: y - centre.y })) as [Point, Point];
  const between = Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
  const turn = sense * between < 0 ? between + sense * 2 * Math.PI : between;
  return {
    start: from,
    segments: distance(from, to) < 1e-9 ? [] : [{ ...arcFrom(from, centre, turn), to }],
  };
}

/** A closed outline of so many teeth, each turned on from the last. */
export function allRound(tooth: Path, teeth: number): Path {
  const turns = Array.from({ length: teeth }, (_, i) => turnedPath(tooth, (2 * Math.PI * i) / teeth));
  const segments = turns.flatMap((one) => one.segments);
  // The last land ends where the first tooth begins, to the last bit.
  const last = segments.at(-1);
  return {
    start: tooth.start,
    segments: last ? [...segments.slice(0, -1), { ...last, to: tooth.start }] : [],
  };
}
