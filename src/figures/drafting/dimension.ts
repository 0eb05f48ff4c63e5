import type { Pen } from '../pen.js';
import { arrowhead, arrowLength } from './arrow.js';
import type { Point } from './point.js';
import { spread } from './spread.js';

/** From the edge to where its extension line begins, and from the dimension line to where that ends, mm. */
export const STAND_OFF = 0.8;
export const OVERRUN = 1;

/** White between a dimension line and the lettering by it, in font sizes. */
const CLEAR = 0.25;

/** From one dimension line to the next, with a line of lettering between, mm. */
export const lane = (pen: Pen): number =>
  pen.textSize('0').height + 2 * CLEAR * pen.style.labelSize + OVERRUN;

/** A thin line from near an edge to just past the dimension line that needs it. */
function extension(pen: Pen, from: Point, to: Point): void {
  const reach = Math.hypot(to.x - from.x, to.y - from.y);
  if (reach <= STAND_OFF) return;
  const at = (d: number): Point => ({
    x: from.x + ((to.x - from.x) * d) / reach,
    y: from.y + ((to.y - from.y) * d) / reach,
  });
  pen.line('dimension', at(STAND_OFF), at(reach + OVERRUN));
}

/** The line between two ends with its arrowheads: inside where there is room for them, else from without. */
function span(pen: Pen, a: Point, b: Point): void {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const arrow = arrowLength(pen);
  if (length >= 2.6 * arrow) {
    pen.line('dimension', a, b);
    arrowhead(pen, a, b);
    arrowhead(pen, b, a);
    return;
  }
  const out = (1.7 * arrow) / length;
  const before = { x: a.x - (b.x - a.x) * out, y: a.y - (b.y - a.y) * out };
  const after = { x: b.x + (b.x - a.x) * out, y: b.y + (b.y - a.y) * out };
  pen.line('dimension', before, after);
  arrowhead(pen, a, before);
  arrowhead(pen, b, after);
}

/**
 * Dimensions how far apart two places are across the page, on a line at height `y`. Lettering stands on the line
 * where it fits between the ends, else on the side away from the drawing.
 */
export function widthDimension(
  pen: Pen,
  how: { from: Point; to: Point; y: number; label: string | readonly string[] },
): void {
  const { from, to, y, label } = how;
  const a = { x: from.x, y };
  const b = { x: to.x, y };
  extension(pen, from, a);
  extension(pen, to, b);
  span(pen, a, b);
  const clear = CLEAR * pen.style.labelSize;
  const fits = pen.textSize(label).width + 2 * clear <= Math.abs(b.x - a.x);
  const below = !fits && from.y < y;
  const away = fits ? clear : OVERRUN + clear;
  pen.text(label, { x: (a.x + b.x) / 2, y: below ? y + away : y - away }, { sit: below ? 'below' : 'above' });
}

/** Dimensions how far apart two places are up the page, on a line at `x`, lettering level beside it. */
export function heightDimension(
  pen: Pen,
  how: { from: Point; to: Point; x: number; label: string | readonly string[]; side: 'left' | 'right' },
): void {
  const { from, to, x, label, side } = how;
  const a = { x, y: from.y };
  const b = { x, y: to.y };
  extension(pen, from, a);
  extension(pen, to, b);
  span(pen, a, b);
  const away = OVERRUN + CLEAR * pen.style.labelSize;
  const at = { x: side === 'left' ? x - away : x + away, y: (a.y + b.y) / 2 };
  pen.text(label, at, { anchor: side === 'left' ? 'end' : 'start' });
}

/** A place along a chain of dimensions, and the letter of the stretch that leads to the next. */
export interface Link {
  readonly at: Point;
  readonly letter?: string;
}

/**
 * Several dimensions end to end on one line at height `y`, each with a short letter below it; a stretch of no length
 * is left out. Where arrowheads do not fit, a dot marks the joint (ISO 129-1).
 */
export function chainDimension(pen: Pen, y: number, links: readonly Link[]): void {
  const kept = links.filter(({ at }, i) => Math.abs((links[i + 1]?.at.x ?? Infinity) - at.x) > 1e-9);
  const places = kept.map(({ at }) => at);
  const letters = kept.flatMap(({ letter }) => (letter === undefined ? [] : [letter]));
  const arrow = arrowLength(pen);
  const joints = places.map(({ x }) => ({ x, y }));
  const roomy = joints.slice(1).map((joint, i) => joint.x - (joints[i]?.x ?? 0) >= 2.6 * arrow);
  for (const [i, place] of places.entries()) {
    const joint = { x: place.x, y };
    extension(pen, place, joint);
    const previous = joints[i - 1];
    const next = joints[i + 1];
    const tight = (previous && !roomy[i - 1]) || (next && !roomy[i]);
    if (tight) pen.circle('dimension', joint, 0.45, 'ink');
    if (previous) pen.line('dimension', previous, joint);
    if (tight) continue;
    if (previous) arrowhead(pen, joint, previous);
    if (next) arrowhead(pen, joint, next);
  }
  const below = y + OVERRUN + CLEAR * pen.style.labelSize;
  const middles = spread(
    letters.map((_, i) => ((joints[i]?.x ?? 0) + (joints[i + 1]?.x ?? 0)) / 2),
    letters.map((letter) => pen.textSize(letter).width + 0.3 * pen.style.labelSize),
  );
  for (const [i, letter] of letters.entries())
    pen.text(letter, { x: middles[i] ?? 0, y: below }, { sit: 'below' });
}
