import { arrowhead } from '../../drafting/arrow.js';
import { onBearing, type Point, point } from '../../drafting/point.js';
import type { Pen } from '../../pen.js';

/** The way a piece of work turns: an arc with an arrow, clockwise. */
function turning(pen: Pen, about: Point, radius: number, from: number, to: number): void {
  pen.stroke('outline', (trace) => trace.arc(about, radius, from, to));
  arrowhead(pen, onBearing(radius, to, about), onBearing(radius, to - 0.35, about));
}

/** A fist, seen from the side: a rounded block with the lines of the fingers, its thumb over it. */
function fist(pen: Pen, { x, y }: Point, size: number): void {
  const [w, h, r] = [0.62 * size, 0.5 * size, 0.16 * size];
  pen.stroke(
    'outline',
    (trace) =>
      trace
        .moveTo(point(x - w + r, y - h))
        .lineTo(point(x + w - r, y - h))
        .bend(point(x + w, y - h + r), r, 'clockwise')
        .lineTo(point(x + w, y + h - r))
        .bend(point(x + w - r, y + h), r, 'clockwise')
        .lineTo(point(x - w + r, y + h))
        .bend(point(x - w, y + h - r), r, 'clockwise')
        .lineTo(point(x - w, y - h + r))
        .bend(point(x - w + r, y - h), r, 'clockwise'),
    'paper',
  );
  for (const at of [-0.5, 0, 0.5])
    pen.line('fine', point(x + at * w, y - 0.15 * h), point(x + at * w, y + h));
}

/** Work that turns, a strip of emery over it, and a hand on each end. */
export function emery(pen: Pen, size: number): void {
  const work = 0.42 * size;
  const about = point(0, -0.3 * size);
  const strip = work + 0.07 * size;
  const foot = 0.55 * size;
  const apart = 0.5 * size;
  pen.circle('outline', about, work);
  pen.line('centre', point(-0.2 * size, about.y), point(0.2 * size, about.y));
  pen.line('centre', point(0, about.y - 0.2 * size), point(0, about.y + 0.2 * size));
  turning(pen, about, work + 0.27 * size, -0.75, 0.75);
  for (const out of [0, 0.08 * size])
    pen.stroke('outline', (trace) =>
      trace
        .moveTo(point(-apart - out, foot))
        .lineTo(onBearing(strip + out, -Math.PI / 2, about))
        .arc(about, strip + out, -Math.PI / 2, Math.PI / 2)
        .lineTo(point(apart + out, foot)),
    );
  for (const side of [-1, 1]) {
    const hand = point(side * (apart + 0.04 * size), foot + 0.06 * size);
    // The sleeve, cut off where the sign ends.
    for (const [near, far] of [
      [-0.17, -0.2],
      [0.17, 0.26],
    ] as const)
      pen.line(
        'outline',
        point(hand.x + side * near * size, hand.y + 0.2 * size),
        point(hand.x + side * far * size, 0.96 * size),
      );
    fist(pen, hand, 0.4 * size);
  }
}

/** The face of a three-jaw chuck, its key standing in the topmost socket. */
export function chuckKey(pen: Pen, size: number): void {
  const radius = 0.66 * size;
  const about = point(0, 0.3 * size);
  pen.circle('outline', about, radius);
  pen.circle('outline', about, 0.16 * size);
  for (const bearing of [0, (2 * Math.PI) / 3, (4 * Math.PI) / 3]) {
    const half = 0.09 * size;
    const [out, side] = [onBearing(1, bearing), onBearing(1, bearing + Math.PI / 2)];
    const at = (along: number, aside: number): Point =>
      point(about.x + out.x * along + side.x * aside, about.y + out.y * along + side.y * aside);
    pen.polygon(
      'outline',
      [
        at(0.17 * size, 0),
        at(0.28 * size, half),
        at(0.58 * size, half),
        at(0.58 * size, -half),
        at(0.28 * size, -half),
      ],
      'paper',
    );
  }
  const top = about.y - radius;
  const stem = 0.06 * size;
  const bar = -0.86 * size;
  pen.rectangle('outline', { left: -stem, right: stem, top: bar, bottom: top + 0.01 * size }, 'paper');
  pen.rectangle(
    'outline',
    { left: -0.42 * size, right: 0.42 * size, top: bar - 0.06 * size, bottom: bar + 0.06 * size },
    'paper',
  );
}

/** A toothed cutter under a guard that comes down to the work on either side. */
export function guard(pen: Pen, size: number): void {
  const about = point(0, -0.1 * size);
  const [tip, root] = [0.62 * size, 0.5 * size];
  const teeth = 14;
  const step = (2 * Math.PI) / teeth;
  pen.polygon(
    'outline',
    Array.from({ length: teeth }, (_, i) => [
      onBearing(root, i * step, about),
      onBearing(tip, i * step, about),
    ]).flat(),
  );
  pen.circle('outline', about, 0.14 * size);
  turning(pen, about, 0.32 * size, -0.9, 0.9);
  const [inside, outside] = [0.76 * size, 0.88 * size];
  const open = 1.95;
  pen.stroke(
    'outline',
    (trace) => trace.arc(about, outside, -open, open).arc(about, inside, open, -open).close(),
    'ink',
  );
  // The work stands before the foot of the cutter.
  const top = about.y + tip - 0.14 * size;
  pen.rectangle('outline', { left: -1.1 * size, right: 1.1 * size, top, bottom: top + 0.34 * size }, 'paper');
}

/** A head from the front, goggles over the eyes. */
export function goggles(pen: Pen, size: number): void {
  pen.circle('outline', point(0, 0), 0.8 * size);
  const level = -0.15 * size;
  for (const side of [-1, 1]) {
    const x = side * 0.37 * size;
    pen.circle('outline', point(x, level), 0.3 * size, 'ink');
    pen.circle('outline', point(x, level), 0.22 * size, 'paper');
    pen.line('outline', point(side * 0.67 * size, level), point(side * 0.785 * size, level));
  }
  pen.line('outline', point(-0.08 * size, level), point(0.08 * size, level));
  pen.stroke('outline', (trace) =>
    trace
      .moveTo(point(-0.28 * size, 0.38 * size))
      .bend(point(0.28 * size, 0.38 * size), 0.5 * size, 'anticlockwise'),
  );
}
