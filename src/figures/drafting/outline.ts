import { isArc, type Path } from '../../geometry/curves/path.js';
import { distance } from '../../geometry/curves/point.js';
import { type Point, point } from './point.js';
import type { Trace } from './trace.js';

/** Draws a path of the geometry, whose y runs up, about a place on the paper and at a scale; arcs stay arcs. */
export function traceOutline(trace: Trace, { start, segments }: Path, about: Point, scale: number): Trace {
  const onPaper = (p: Point): Point => point(about.x + p.x * scale, about.y - p.y * scale);
  trace.moveTo(onPaper(start));
  for (const segment of segments) {
    if (!isArc(segment)) {
      trace.lineTo(onPaper(segment.to));
      continue;
    }
    const { to, centre, turn } = segment;
    // Bearings run clockwise from the top; the geometry's angles anticlockwise from the right.
    const bearing = Math.PI / 2 - Math.atan2(to.y - centre.y, to.x - centre.x);
    trace.arc(onPaper(centre), distance(to, centre) * scale, bearing + turn, bearing);
  }
  return trace;
}
