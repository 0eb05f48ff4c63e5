import type { Point as Place } from '../../../geometry/curves/point.js';
import { type Point, point } from '../../drafting/point.js';
import type { Trace } from '../../drafting/trace.js';

/** The outline of a wheel that was cut, about a place on the paper. */
export function traceWheel(
  trace: Trace,
  outlines: readonly (readonly Place[])[],
  about: Point,
  scale: number,
): Trace {
  for (const outline of outlines)
    trace.through(outline.map(({ x, y }) => point(about.x + x * scale, about.y - y * scale))).close();
  return trace;
}
