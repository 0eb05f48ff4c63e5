import type { Pen } from '../pen.js';
import { type Extent, extentOf, type LabelBox } from './marks.js';
import type { Point } from './point.js';

/** White that every label keeps about it, mm. */
const WHITE = 0.3;

/** Whether no label on the board touches another, or a line. All labels must stand level. */
export function isClear(pen: Pen): boolean {
  const rooms = pen.marks.labels.map(roomOf);
  return rooms.every(
    (room, i) => rooms.slice(i + 1).every((other) => apart(room, other, WHITE)) && isOffLines(pen, room),
  );
}

/** Whether a room is free of labels and lines so far. */
export function isFree(pen: Pen, room: Extent): boolean {
  return pen.marks.labels.every((label) => apart(room, roomOf(label), WHITE)) && isOffLines(pen, room);
}

const isOffLines = (pen: Pen, room: Extent): boolean =>
  pen.marks.ink.every(({ points, width }) => {
    const wide = grown(room, WHITE + width / 2);
    return points.every((p, k) => {
      const q = points[k + 1];
      return q === undefined || !crosses(wide, p, q);
    });
  });

const roomOf = (label: LabelBox): Extent => extentOf({ labels: [label], ink: [] });

const grown = ({ left, top, right, bottom }: Extent, by: number): Extent => ({
  left: left - by,
  top: top - by,
  right: right + by,
  bottom: bottom + by,
});

const apart = (a: Extent, b: Extent, by: number): boolean =>
  a.right + by < b.left || b.right + by < a.left || a.bottom + by < b.top || b.bottom + by < a.top;

/** A quick look first: most lines are nowhere near most labels. */
const crosses = (room: Extent, p: Point, q: Point): boolean =>
  !(p.x < room.left && q.x < room.left) &&
  !(p.x > room.right && q.x > room.right) &&
  !(p.y < room.top && q.y < room.top) &&
  !(p.y > room.bottom && q.y > room.bottom) &&
  shareWithin(room, p, q) !== undefined;

/**
 * Which part of a stretch lies in a room, from and to, as shares of it: what is left of it between the room's sides, and
 * then between top and bottom. Nothing where none does.
 */
export function shareWithin(room: Extent, p: Point, q: Point): [number, number] | undefined {
  let [from, to] = [0, 1];
  for (const [start, way, low, high] of [
    [p.x, q.x - p.x, room.left, room.right],
    [p.y, q.y - p.y, room.top, room.bottom],
  ] as const) {
    if (way === 0) {
      if (start < low || start > high) return undefined;
      continue;
    }
    const [a, b] = [(low - start) / way, (high - start) / way];
    from = Math.max(from, Math.min(a, b));
    to = Math.min(to, Math.max(a, b));
  }
  return from <= to ? [from, to] : undefined;
}
