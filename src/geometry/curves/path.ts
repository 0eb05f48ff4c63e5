import { distance, mirrored, type Point, turned } from './point.js';

/** A straight line from where the path stands. */
export interface Line {
  readonly to: Point;
}

/** An arc from where the path stands, about a centre; `turn` in radians, anticlockwise above 0, less than a full turn. */
export interface Arc {
  readonly to: Point;
  readonly centre: Point;
  readonly turn: number;
}

export type Segment = Line | Arc;

/** Lines and arcs end to end; a closed outline ends where it starts. x right, y up, lengths mm. */
export interface Path {
  readonly start: Point;
  readonly segments: readonly Segment[];
}

export const isArc = (segment: Segment): segment is Arc => 'centre' in segment;

/** Where a path ends. */
export const endOf = ({ start, segments }: Path): Point => segments.at(-1)?.to ?? start;

/** Places joined by straight lines; at least one. */
export function throughPoints([start, ...rest]: readonly Point[]): Path {
  if (!start) throw new RangeError('a path has at least one place');
  return { start, segments: rest.map((to) => ({ to })) };
}

/** An arc about a centre from a place. */
export function arcFrom(start: Point, centre: Point, turn: number): Arc {
  const from = turned({ x: start.x - centre.x, y: start.y - centre.y }, turn);
  return { to: { x: centre.x + from.x, y: centre.y + from.y }, centre, turn };
}

/** Paths one after the other; a gap of more than a millionth of a millimetre is closed by a line. */
export function joined(...paths: readonly Path[]): Path {
  const [first, ...rest] = paths;
  if (!first) throw new RangeError('nothing to join');
  const segments = [...first.segments];
  let here = endOf(first);
  for (const path of rest) {
    if (distance(here, path.start) > 1e-6) segments.push({ to: path.start });
    segments.push(...path.segments);
    here = endOf(path);
  }
  return { start: first.start, segments };
}

/** The same path from its end to its start. */
export function reversed(path: Path): Path {
  const places = [path.start, ...path.segments.map(({ to }) => to)];
  const segments = path.segments.map((segment, place): Segment => {
    const to = places[place] as Point;
    return isArc(segment) ? { to, centre: segment.centre, turn: -segment.turn } : { to };
  });
  return { start: endOf(path), segments: segments.reverse() };
}

const moved = (path: Path, move: (point: Point) => Point, sense: 1 | -1): Path => ({
  start: move(path.start),
  segments: path.segments.map((segment) =>
    isArc(segment)
      ? { to: move(segment.to), centre: move(segment.centre), turn: sense * segment.turn }
      : { to: move(segment.to) },
  ),
});

/** The path turned about the origin, radians anticlockwise. */
export const turnedPath = (path: Path, angle: number): Path => {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return moved(path, ({ x, y }) => ({ x: x * cos - y * sin, y: x * sin + y * cos }), 1);
};

/** The path moved along. */
export const shifted = (path: Path, by: Point): Path =>
  moved(path, ({ x, y }) => ({ x: x + by.x, y: y + by.y }), 1);

/** The path mirrored in the x axis. */
export const mirroredPath = (path: Path): Path => moved(path, mirrored, -1);

/** Area enclosed by a closed outline, mm², above 0 when it runs anticlockwise; arcs exactly. */
export function areaOf({ start, segments }: Path): number {
  let twice = 0;
  let from = start;
  for (const segment of segments) {
    const { to } = segment;
    twice += from.x * to.y - to.x * from.y;
    // A segment of a circle lies between the chord and the arc.
    if (isArc(segment)) twice += distance(to, segment.centre) ** 2 * (segment.turn - Math.sin(segment.turn));
    from = to;
  }
  twice += from.x * start.y - start.x * from.y;
  return twice / 2;
}

/** Length of a path, mm. */
export function lengthOf({ start, segments }: Path): number {
  let sum = 0;
  let from = start;
  for (const segment of segments) {
    sum += isArc(segment)
      ? distance(segment.to, segment.centre) * Math.abs(segment.turn)
      : distance(from, segment.to);
    from = segment.to;
  }
  return sum;
}

/** The path as points, chords no further than `tolerance` mm from their arcs. */
export function flattened({ start, segments }: Path, tolerance: number): Point[] {
  const points = [start];
  let from = start;
  for (const segment of segments) {
    if (isArc(segment)) {
      const radius = distance(segment.to, segment.centre);
      const step = 2 * Math.acos(Math.max(0.5, 1 - tolerance / radius));
      const count = Math.ceil(Math.abs(segment.turn) / step);
      for (let i = 1; i < count; i++)
        points.push(arcFrom(from, segment.centre, (segment.turn * i) / count).to);
    }
    points.push(segment.to);
    from = segment.to;
  }
  return points;
}
