import { isArc, type Path, type Segment } from '../curves/path.js';
import { distance, type Point } from '../curves/point.js';

/** Highest and lowest level that a path reaches, arcs exactly. */
export function reach({ start, segments }: Path): { readonly highest: number; readonly lowest: number } {
  const levels = [start.y];
  let from = start;
  for (const segment of segments) {
    levels.push(segment.to.y);
    if (isArc(segment)) {
      const radius = distance(segment.to, segment.centre);
      for (const side of [1, -1] as const) {
        const extreme = { x: segment.centre.x, y: segment.centre.y + side * radius };
        if (passes(segment, from, extreme)) levels.push(extreme.y);
      }
    }
    from = segment.to;
  }
  return { highest: Math.max(...levels), lowest: Math.min(...levels) };
}

/** Whether an arc from a place goes through another place of its circle. */
function passes({ centre, turn }: Extract<Segment, { turn: number }>, from: Point, place: Point): boolean {
  const bearing = (p: Point) => Math.atan2(p.y - centre.y, p.x - centre.x);
  const ahead = (bearing(place) - bearing(from)) * Math.sign(turn);
  return (ahead + 4 * Math.PI) % (2 * Math.PI) <= Math.abs(turn);
}

/** The longest straight line of a path that rises to the right: the flank of a groove. */
export function flankOf({ start, segments }: Path): { readonly foot: Point; readonly top: Point } {
  let flank = { foot: start, top: start };
  let from = start;
  for (const segment of segments) {
    const longer = distance(from, segment.to) > distance(flank.foot, flank.top);
    if (!isArc(segment) && segment.to.y > from.y && longer) flank = { foot: from, top: segment.to };
    from = segment.to;
  }
  return flank;
}

/** Height on the flank, or on its line made longer, so far from the middle of the groove. */
export function levelOnFlank({ foot, top }: ReturnType<typeof flankOf>, x: number): number {
  return foot.y + ((x - foot.x) * (top.y - foot.y)) / (top.x - foot.x);
}

/** Distance of a place from the nearest of a path, mm. */
export function clearOf({ start, segments }: Path, p: Point): number {
  let nearest = distance(start, p);
  let from = start;
  for (const segment of segments) {
    nearest = Math.min(nearest, distance(segment.to, p), besides(segment, from, p));
    from = segment.to;
  }
  return nearest;
}

/** Distance from a segment where the foot of the perpendicular lies on it; else far away. */
function besides(segment: Segment, from: Point, p: Point): number {
  if (isArc(segment)) {
    const radius = distance(segment.to, segment.centre);
    return passes(segment, from, p) ? Math.abs(distance(p, segment.centre) - radius) : Infinity;
  }
  const { to } = segment;
  const chord = distance(from, to);
  const along = ((p.x - from.x) * (to.x - from.x) + (p.y - from.y) * (to.y - from.y)) / chord;
  if (!(along >= 0 && along <= chord)) return Infinity;
  return Math.abs((to.x - from.x) * (p.y - from.y) - (to.y - from.y) * (p.x - from.x)) / chord;
}
