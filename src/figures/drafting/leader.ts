import type { Pen } from '../pen.js';
import { arrow } from './arrow.js';
import type { Point } from './point.js';
import { spread } from './spread.js';

/** A note and the place it speaks of. `via` is where its line may bend on the way. */
export interface Note {
  readonly text: string | readonly string[];
  readonly tip: Point;
  readonly via?: Point;
}

/**
 * Notes one under another in a column to the right of `x`, or to its left, each with a line to what it names. They are
 * given from the top down, and stand level with their places as nearly as the lettering allows.
 */
export function notesAt(pen: Pen, x: number, notes: readonly Note[], side: 'left' | 'right' = 'right'): void {
  const size = pen.style.labelSize;
  const out = side === 'right' ? 1 : -1;
  const heights = notes.map(({ text }) => pen.textSize(text).height + 0.35 * size);
  const levels = spread(
    notes.map(({ tip, via }) => (via ?? tip).y),
    heights,
  );
  for (const [i, { text, tip, via }] of notes.entries()) {
    const end = { x, y: levels[i] ?? tip.y };
    const shelf = { x: x - 0.8 * size * out, y: end.y };
    arrow(pen, end, shelf, ...(via ? [via] : []), tip);
    const anchor = side === 'right' ? 'start' : 'end';
    pen.text(text, { x: x + 0.35 * size * out, y: end.y }, { anchor });
  }
}
