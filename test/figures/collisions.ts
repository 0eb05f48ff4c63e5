import {
  type Extent,
  extentOf,
  type Ink,
  type LabelBox,
  type Marks,
} from '../../src/figures/drafting/marks.js';
import type { Point } from '../../src/figures/drafting/point.js';

/** White that must be left between a letter's box and ink, mm, beyond half the width of the line. */
const CLEARANCE = 0.1;

/** Every label that touches a line or another label, in words; none in a good figure. */
export function collisions({ labels, ink }: Marks): string[] {
  const found: string[] = [];
  const reaches = ink.map((line) => extentOf({ labels: [], ink: [line] }));
  labels.forEach((label, i) => {
    const room = extentOf({ labels: [label], ink: [] });
    for (const other of labels.slice(i + 1)) {
      if (overlap(label.corners, other.corners)) found.push(`“${label.text}” overlaps “${other.text}”`);
    }
    for (const [k, line] of ink.entries()) {
      if (apart(room, reaches[k] as Extent)) continue;
      if (touches(label, line)) found.push(`“${label.text}” is crossed by a line ${line.width} mm wide`);
    }
  });
  return found;
}

/** A quick look: most lines are nowhere near most labels. */
const apart = (a: Extent, b: Extent): boolean =>
  a.right < b.left - 1 || b.right < a.left - 1 || a.bottom < b.top - 1 || b.bottom < a.top - 1;

/** Two convex shapes overlap unless some edge of one has the other wholly on its far side. */
function overlap(a: readonly Point[], b: readonly Point[], margin = 0): boolean {
  return !parted(a, b, margin) && !parted(b, a, margin);
}

function parted(a: readonly Point[], b: readonly Point[], margin: number): boolean {
  return a.some((p, i) => {
    const q = a[(i + 1) % a.length] as Point;
    const length = Math.hypot(q.x - p.x, q.y - p.y);
    if (length === 0) return false;
    const off = ({ x, y }: Point): number => ((q.x - p.x) * (y - p.y) - (q.y - p.y) * (x - p.x)) / length;
    const inside = Math.max(...a.map(off)) > 1e-9 ? 1 : -1;
    return b.every((place) => off(place) * inside < -margin);
  });
}

function touches(label: LabelBox, { points, width }: Ink): boolean {
  const margin = width / 2 + CLEARANCE;
  return points.some((p, i) => {
    const q = points[i + 1];
    return q !== undefined && segmentNear(label.corners, p, q, margin);
  });
}

/** Whether a segment enters a box or passes nearer to it than a margin. */
function segmentNear(box: readonly Point[], p: Point, q: Point, margin: number): boolean {
  const length = Math.hypot(q.x - p.x, q.y - p.y);
  if (length < 1e-9) return false;
  const nx = -(q.y - p.y) / length;
  const ny = (q.x - p.x) / length;
  const sides = box.map(({ x, y }) => (x - p.x) * nx + (y - p.y) * ny);
  if (Math.min(...sides) > margin || Math.max(...sides) < -margin) return false;
  return !parted(box, [p, q], margin);
}
