import { isArc, type Path } from '../curves/path.js';
import { distance, type Point } from '../curves/point.js';

/** Area times the square of its distance from the origin, inside a closed outline; mm⁴, arcs exactly (Green). */
export function polarMomentOf({ start, segments }: Path): number {
  let moment = 0;
  let from = start;
  for (const segment of segments) {
    moment += isArc(segment)
      ? arcMoment(from, segment.centre, distance(segment.to, segment.centre), segment.turn)
      : lineMoment(from, segment.to);
    from = segment.to;
  }
  return moment + lineMoment(from, start);
}

/** Of the triangle between the origin and a line. */
function lineMoment(a: Point, b: Point): number {
  const twiceArea = a.x * b.y - b.x * a.y;
  return (twiceArea * (a.x * a.x + a.y * a.y + a.x * b.x + a.y * b.y + b.x * b.x + b.y * b.y)) / 12;
}

/** Of the region between the origin and an arc: a quarter of the integral of r²(x dy − y dx) along it. */
function arcMoment(from: Point, centre: Point, radius: number, turn: number): number {
  const first = Math.atan2(from.y - centre.y, from.x - centre.x);
  const last = first + turn;
  const { x: u, y: v } = centre;
  // With k the part of the centre's place that points along the arc's own radius, the integral needs k and k².
  const [s, c] = [Math.sin(last) - Math.sin(first), Math.cos(last) - Math.cos(first)];
  const sumOfK = u * s - v * c;
  const waves = (Math.sin(2 * last) - Math.sin(2 * first)) / 4;
  const cross = (Math.sin(last) ** 2 - Math.sin(first) ** 2) / 2;
  const sumOfSquares = u * u * (turn / 2 + waves) + v * v * (turn / 2 - waves) + 2 * u * v * cross;
  const square = u * u + v * v + radius * radius;
  return (
    (radius *
      (square * radius * turn + (square + 2 * radius * radius) * sumOfK + 2 * radius * sumOfSquares)) /
    4
  );
}
