import type { Pen } from '../pen.js';
import type { Point } from './point.js';

/** Shorter strokes than this are dropped: they print as dirt, mm. */
const SHORTEST = 0.3;

/**
 * Fills a region with parallel strokes, cut off exactly at its edges. Several outlines make one region; where two
 * overlap is a hole (even-odd rule).
 *
 * @param how `angle` degrees, 0 level, 45 rising to the right; `spacing` mm
 */
export function hatch(
  pen: Pen,
  outlines: readonly (readonly Point[])[],
  how: { angle?: number; spacing?: number } = {},
): void {
  const { angle = 45, spacing = 1.8 } = how;
  const cos = Math.cos((angle * Math.PI) / 180);
  const sin = Math.sin((angle * Math.PI) / 180);
  // Turned so that the strokes lie level.
  const turned = outlines.map((outline) =>
    outline.map(({ x, y }) => ({ x: x * cos - y * sin, y: x * sin + y * cos })),
  );
  const levels = turned.flat().map(({ y }) => y);
  const strokes: [Point, Point][] = [];
  const first = Math.ceil(Math.min(...levels) / spacing) * spacing;
  for (let y = first; y < Math.max(...levels); y += spacing) {
    const cuts = turned.flatMap((outline) => crossings(outline, y)).sort((a, b) => a - b);
    for (let i = 0; i + 1 < cuts.length; i += 2) {
      const [from, to] = [cuts[i] as number, cuts[i + 1] as number];
      if (to - from < SHORTEST) continue;
      strokes.push([
        { x: from * cos + y * sin, y: -from * sin + y * cos },
        { x: to * cos + y * sin, y: -to * sin + y * cos },
      ]);
    }
  }
  if (strokes.length > 0)
    pen.stroke('hatch', (trace) => strokes.forEach(([a, b]) => trace.moveTo(a).lineTo(b)));
}

/** Where a closed outline crosses a level. */
function crossings(outline: readonly Point[], y: number): number[] {
  return outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    return a.y <= y !== b.y <= y ? [a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)] : [];
  });
}
