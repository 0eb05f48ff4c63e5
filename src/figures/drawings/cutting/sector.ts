import type { Given } from '../../../calculations/cutting/given.js';
import type { CutWheel } from '../../../calculations/cutting/job.js';
import { jobFor } from '../../../calculations/cutting/job.js';
import { spacesRound } from '../../../geometry/cutting/indexing.js';

/** A part of a wheel to be shown; degrees anticlockwise from the first cut, near one turn round. */
export interface Sector {
  readonly from: number;
  readonly to: number;
  /** What stands at the top: the middle of the closing tooth, or the first cut where that tooth is gone. */
  readonly middle: number;
  /** Whether the closing tooth is left. */
  readonly closing: boolean;
  /** Teeth that are shown whole. */
  readonly teeth: readonly { angle: number; thickness: number; closing: boolean }[];
}

/** A closing tooth of more pitches than this is not shown whole. */
const WHOLE = 4;

/**
 * The closing tooth and its neighbours.
 *
 * @param most teeth shown to either hand
 */
export function closingTeeth({ measured }: CutWheel, g: Given, most: number): Sector {
  const spaces = spacesRound(jobFor(g).cuts, g.teeth);
  const count = spaces.length;
  const gap = (i: number): { start: number; end: number } => {
    const place = ((i % count) + count) % count;
    const turn = 360 * Math.floor(i / count);
    const start = (spaces[place] ?? 0) + turn;
    return { start, end: place === count - 1 ? 360 + turn : (spaces[place + 1] ?? 0) + turn };
  };
  const beside = Math.min(most, Math.floor((count - 1) / 2));
  const shown = Array.from({ length: 2 * beside + 1 }, (_, i) => count - 1 - beside + i);
  const all = shown.map((i) => {
    const { start, end } = gap(i);
    const thickness = measured.toothThicknesses[((i % count) + count) % count] ?? 0;
    return { angle: (start + end) / 2, thickness, closing: i === count - 1 };
  });
  const pitch = 360 / g.teeth;
  // A space and some of what comes beyond it at either end.
  const to = gap(shown.at(-1) ?? 0).end + 0.4 * pitch;
  const last = gap(count - 1);
  const closing = (measured.toothThicknesses.at(-1) ?? 0) > 0;
  if (last.end - last.start > WHOLE * pitch) {
    const near = all.filter(({ angle, closing: is }) => is || angle > 360);
    const teeth = near.map((one) => (one.closing ? { ...one, angle: 360 - 1.2 * pitch } : one)).reverse();
    return { from: 360 - 2 * pitch, to, middle: 360, closing, teeth };
  }
  const from = gap(shown[0] ?? 0).start - 0.4 * pitch;
  const middle = closing ? (all.find((one) => one.closing)?.angle ?? 360) : 360;
  return { from, to, middle, closing, teeth: all.filter(({ thickness }) => thickness > 0).reverse() };
}
