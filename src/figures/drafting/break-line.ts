import type { Pen } from '../pen.js';
import { along, distance, type Point } from './point.js';
import type { Trace } from './trace.js';

/** Length of one wave, mm. */
const WAVE = 9;

/** Draws on in gentle waves to a place: the edge of a part that goes on beyond the drawing (ISO 128-2). */
export function wave(trace: Trace, from: Point, to: Point): Trace {
  const halves = Math.max(2, 2 * Math.round(distance(from, to) / WAVE));
  for (let i = 1; i <= halves; i++) {
    const length = distance(from, to) / halves;
    trace.bend(along(from, to, i / halves), length * 1.3, i % 2 === 0 ? 'clockwise' : 'anticlockwise');
  }
  return trace;
}

/** A break line from place to place. */
export function breakLine(pen: Pen, from: Point, to: Point): void {
  pen.stroke('fine', (trace) => wave(trace.moveTo(from), from, to));
}
