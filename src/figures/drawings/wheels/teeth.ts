import {
  endOf,
  joined,
  mirroredPath,
  type Path,
  type Segment,
  turnedPath,
} from '../../../geometry/curves/path.js';
import { wave } from '../../drafting/break-line.js';
import { traceOutline } from '../../drafting/outline.js';
import { type Point, point } from '../../drafting/point.js';
import { ENLARGEMENTS, REDUCTIONS } from '../../drafting/scale.js';
import type { Pen } from '../../pen.js';

/** Every scale, the largest first. */
export const SCALES = [...ENLARGEMENTS, ...REDUCTIONS.slice(1)] as const;

/** Teeth of a wheel at some angles about its centre, rising, with the bottom of the space before the first. */
export function rowOfTeeth(tooth: Path, pitch: number, angles: readonly number[]): Path {
  const turned = angles.map((angle) => turnedPath(tooth, angle));
  const first = angles[0] ?? 0;
  return joined(turnedPath(bottomOf(tooth), first - pitch), ...turned);
}

/** The bottom of the space that a tooth's path ends with. */
function bottomOf({ start, segments }: Path): Path {
  const last = segments.at(-1) as Segment;
  return { start: segments.at(-2)?.to ?? start, segments: [last] };
}

/** The same path with x and y exchanged: what runs right and up runs up and right. */
export const exchanged = (path: Path): Path => turnedPath(mirroredPath(path), Math.PI / 2);

/** Draws a row of teeth about a wheel's centre on the paper, and breaks off the rim at a radius. */
export function drawRow(pen: Pen, row: Path, rim: number, centre: Point): void {
  const onPaper = ({ x, y }: Point): Point => point(centre.x + x, centre.y - y);
  const onRim = ({ x, y }: Point): Point => {
    const share = rim / Math.hypot(x, y);
    return onPaper({ x: x * share, y: y * share });
  };
  const [a, b] = [row.start, endOf(row)];
  pen.stroke('outline', (trace) => traceOutline(trace, row, centre, 1));
  pen.stroke('fine', (trace) => {
    wave(trace.moveTo(onPaper(b)), onPaper(b), onRim(b));
    wave(trace, onRim(b), onRim(a));
    wave(trace, onRim(a), onPaper(a));
  });
}
