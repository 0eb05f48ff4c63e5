import type { Point } from '../curves/point.js';

/** A stretch of a circle that lies in metal, degrees anticlockwise from the top; `to` may pass 360. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Degrees anticlockwise from the top, 0 to 360, of a place seen from a centre. */
export const bearing = (p: Point, centre: Point): number =>
  ((Math.atan2(centre.x - p.x, p.y - centre.y) * 180) / Math.PI + 360) % 360;

/**
 * Where a circle runs in metal.
 *
 * @param outlines edges of metal, anticlockwise about it; each edge crosses the circle once at most
 */
export function metalRound(
  outlines: readonly (readonly Point[])[],
  centre: Point,
  radius: number,
): Stretch[] {
  const starts: number[] = [];
  const ends: number[] = [];
  for (const outline of outlines) {
    let from = outline.at(-1) as Point;
    let was = Math.hypot(from.x - centre.x, from.y - centre.y) < radius;
    for (const to of outline) {
      const is = Math.hypot(to.x - centre.x, to.y - centre.y) < radius;
      // An edge that runs outward has its metal on the left, which is onward round the circle.
      if (is !== was) (was ? starts : ends).push(bearing(crossing(from, to, centre, radius), centre));
      [from, was] = [to, is];
    }
  }
  starts.sort((a, b) => a - b);
  ends.sort((a, b) => a - b);
  const first = ends.findIndex((end) => end > (starts[0] ?? 0));
  return starts.map((from, i) => {
    const to = ends[(i + Math.max(0, first)) % ends.length] ?? from;
    return { from, to: to < from ? to + 360 : to };
  });
}

/** Where an edge with one end within a circle crosses it. */
function crossing(a: Point, b: Point, centre: Point, radius: number): Point {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const [ax, ay] = [a.x - centre.x, a.y - centre.y];
  const square = dx * dx + dy * dy;
  const half = ax * dx + ay * dy;
  const rest = ax * ax + ay * ay - radius * radius;
  const root = Math.sqrt(Math.max(0, half * half - square * rest));
  const t = rest < 0 ? (-half + root) / square : (-half - root) / square;
  return { x: a.x + t * dx, y: a.y + t * dy };
}

const onward = (angle: number): number => ((angle % 360) + 360) % 360;

/**
 * How much of some stretches, none over another, lies between each bound and the next, degrees.
 *
 * @param bounds in order round one turn; the last reaches round to the first
 */
export function between(stretches: readonly Stretch[], bounds: readonly number[]): number[] {
  const first = bounds[0] ?? 0;
  // Turned so that the first bound is nought, and cut in two where they pass it again.
  const pieces = stretches
    .flatMap(({ from, to }): Stretch[] => {
      const start = onward(from - first);
      const end = start + to - from;
      if (end <= 360) return [{ from: start, to: end }];
      return [
        { from: start, to: 360 },
        { from: 0, to: end - 360 },
      ];
    })
    .sort((a, b) => a.from - b.from);
  let piece = 0;
  return bounds.map((bound, i) => {
    const next = bounds[i + 1];
    const low = onward(bound - first);
    const high = next === undefined ? 360 : onward(next - first);
    while ((pieces[piece]?.to ?? Number.POSITIVE_INFINITY) <= low) piece++;
    let sum = 0;
    for (let at = piece; (pieces[at]?.from ?? high) < high; at++) {
      const { from, to } = pieces[at] as Stretch;
      sum += Math.max(0, Math.min(to, high) - Math.max(from, low));
    }
    return sum;
  });
}
