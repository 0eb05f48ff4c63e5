import type { Path, Segment } from './path.js';
import { distance, type Point } from './point.js';

/** Places tried on each piece of a curve. */
const TRIALS = 24;

/** A curve by its parameter. */
export type Curve = (t: number) => Point;

/**
 * A curve as few arcs and lines as keep within a tolerance of it: each piece reaches as far along as it can, and
 * its ends lie on the curve. The curve is smooth between its ends and bends one way within a piece.
 *
 * @param tolerance largest distance from the curve, mm, above 0
 */
export function fitArcs(curve: Curve, from: number, to: number, tolerance: number): Path {
  const segments: Segment[] = [];
  let here = from;
  while (here !== to) {
    const { reached, segment } = longestPiece(curve, here, to, tolerance);
    segments.push(segment);
    here = reached;
  }
  return { start: curve(from), segments };
}

function longestPiece(curve: Curve, from: number, to: number, tolerance: number) {
  const whole = piece(curve, from, to);
  if (strays(whole, curve, from, to) <= tolerance) return { reached: to, segment: whole };
  let [good, bad] = [from, to];
  let segment: Segment = { to: curve(to) };
  for (let step = 0; step < 40 && (good === from || step < 22); step++) {
    const middle = (good + bad) / 2;
    const tried = piece(curve, from, middle);
    if (strays(tried, curve, from, middle) <= tolerance) [good, segment] = [middle, tried];
    else bad = middle;
  }
  if (good === from) throw new RangeError('the curve cannot be followed so closely');
  return { reached: good, segment };
}

/** The arc through both ends that halves its greatest strayings to either side; a line where it is as good as straight. */
function piece(curve: Curve, from: number, to: number): Segment {
  const [a, b] = [curve(from), curve(to)];
  const chord = distance(a, b);
  if (chord === 0) return { to: b };
  const along = { x: (b.x - a.x) / chord, y: (b.y - a.y) / chord };
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  // Where an arc through a, b and a place p has its centre: so far to the left of the chord's middle.
  const offsets = inner(from, to).map((t) => {
    const p = curve(t);
    const u = (p.x - middle.x) * along.x + (p.y - middle.y) * along.y;
    const v = (p.y - middle.y) * along.x - (p.x - middle.x) * along.y;
    return v === 0 ? Number.POSITIVE_INFINITY : (u * u + v * v - (chord * chord) / 4) / (2 * v);
  });
  // In curvature, which passes through 0 smoothly, the best arc lies midway between the extremes.
  const bends = offsets.map((offset) => bend(offset, chord));
  const offset = unbend((Math.min(...bends) + Math.max(...bends)) / 2, chord);
  if (!Number.isFinite(offset) || Math.abs(offset) > 1e6 * chord) return { to: b };
  const centre = { x: middle.x - along.y * offset, y: middle.y + along.x * offset };
  return { to: b, centre, turn: turnBetween(a, b, centre) };
}

/** Signed rise of an arc over its chord, for a centre so far to the left of it; arcs are the lesser ones. */
const bend = (offset: number, chord: number): number => {
  const radius = Math.hypot(offset, chord / 2);
  return Number.isFinite(offset) ? -Math.sign(offset) * (radius - Math.abs(offset)) : 0;
};

const unbend = (rise: number, chord: number): number =>
  rise === 0 ? Number.POSITIVE_INFINITY : -(chord * chord - 4 * rise * rise) / (8 * rise);

function turnBetween(a: Point, b: Point, centre: Point): number {
  const cross = (a.x - centre.x) * (b.y - centre.y) - (a.y - centre.y) * (b.x - centre.x);
  const dot = (a.x - centre.x) * (b.x - centre.x) + (a.y - centre.y) * (b.y - centre.y);
  return Math.atan2(cross, dot);
}

/** Greatest distance of the curve from a piece, at the places tried. */
function strays(segment: Segment, curve: Curve, from: number, to: number): number {
  const a = curve(from);
  let worst = 0;
  for (const t of inner(from, to)) {
    const p = curve(t);
    const away =
      'centre' in segment
        ? Math.abs(distance(p, segment.centre) - distance(a, segment.centre))
        : fromLine(p, a, segment.to);
    worst = Math.max(worst, away);
  }
  return worst;
}

function fromLine(p: Point, a: Point, b: Point): number {
  const chord = distance(a, b);
  return chord === 0
    ? distance(p, a)
    : Math.abs((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / chord;
}

const inner = (from: number, to: number): number[] =>
  Array.from({ length: TRIALS }, (_, i) => from + ((to - from) * (i + 1)) / (TRIALS + 1));
