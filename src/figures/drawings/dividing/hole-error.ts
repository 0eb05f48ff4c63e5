import { z } from 'zod';
import { arrowhead, arrowLength } from '../../drafting/arrow.js';
import { onBearing, type Point, point } from '../../drafting/point.js';
import { fitting } from '../../drafting/scale.js';
import { length as inWords } from '../../drafting/wording.js';
import { wrapped } from '../../drafting/wrap.js';
import { defineFigure } from '../../figure.js';
import { count, length } from '../../given.js';
import { Pen } from '../../pen.js';

/** The angle as it is drawn, so that it is seen at all; behind a worm it is drawn smaller, radians. */
const DRAWN = { direct: 0.3, worm: 0.14 } as const;

/** How far the circle is drawn to each side, radians. */
const OPEN = 1.1;

/** A hole out of place on the plate, and what that does at the wheel. */
export const holeError = defineFigure({
  name: 'hole-error',
  title: 'A hole out of place, at the plate and at the wheel',
  given: z.strictObject({
    holeError: length(0.0001, 10),
    plateRadius: length(1, 1000),
    wheelRadius: length(0.5, 2000),
    ratio: count(1, 1000).default(1),
  }),
  draw({ holeError, plateRadius, wheelRadius, ratio }, style) {
    const pen = new Pen(style);
    const size = style.labelSize;
    const seconds = (206_264.806 * holeError) / plateRadius;
    const atRim = (holeError * wheelRadius) / plateRadius / ratio;
    const mm = (value: number, places = 2): string => inWords(value, style, places);
    const gap = 2 * size;
    const width = (style.maxWidth - gap) / 2 - 2;
    const radius = Math.min(46, width / 2 - 1);
    const plate: Side = {
      centre: point(0, 0),
      radius,
      angle: DRAWN.direct,
      name: 'plate',
      error: mm(holeError, holeError < 0.01 ? 4 : 3),
      at: `radius ${mm(plateRadius, 1)}`,
      turned: inSeconds(seconds),
    };
    const wheel: Side = {
      centre: point(0, 0),
      radius: Math.max(0.45, Math.min(1, wheelRadius / plateRadius)) * radius,
      angle: ratio === 1 ? DRAWN.direct : DRAWN.worm,
      name: ratio === 1 ? 'wheel, on the same spindle' : `wheel, through ${ratio} : 1`,
      error: mm(atRim, atRim < 0.01 ? 5 : 3),
      at: `radius ${mm(wheelRadius, 1)}`,
      turned: inSeconds(seconds / ratio),
    };
    // Side by side, as near as their arcs and their lettering let them.
    const half = ({ radius, name, at, turned }: Side): number => {
      const lines = [...wrapped(pen, name, width), at, `out by ${turned}`];
      return Math.max(radius * Math.sin(OPEN), pen.textSize(lines, { weight: 600 }).width / 2);
    };
    const beside = point(half(plate) + gap + half(wheel), 0);
    drawSide(pen, plate, true, width);
    drawSide(pen, { ...wheel, centre: beside }, false, width);
    const { left, right } = pen.extent;
    const caption = 'The angle is drawn far larger than it is';
    const words = wrapped(pen, caption, style.maxWidth - 2);
    pen.text(words, point((left + right) / 2, pen.extent.bottom + 0.7 * size), { sit: 'below' });
    const label = `A hole ${plate.error} out of place at a radius of ${mm(plateRadius, 1)} is ${plate.turned} at the plate, and ${wheel.turned} or ${wheel.error} at a wheel of radius ${mm(wheelRadius, 1)}${ratio === 1 ? '' : ` through ${ratio} to 1`}.`;
    return fitting(style, pen.finish(label, 'not to scale'));
  },
});

interface Side {
  readonly centre: Point;
  readonly radius: number;
  /** As drawn, radians. */
  readonly angle: number;
  readonly name: string;
  readonly error: string;
  readonly at: string;
  readonly turned: string;
}

/** `3′ 26″`, `5.2″`. */
function inSeconds(seconds: number): string {
  if (seconds < 60) return `${Number(seconds.toPrecision(2))}″`;
  const whole = Math.round(seconds);
  return whole < 3600 ? `${Math.floor(whole / 60)}′ ${whole % 60}″` : `${(whole / 3600).toFixed(2)}°`;
}

/** Half a circle with its true radius upright, the wrong one beside it, and what lies between. */
function drawSide(
  pen: Pen,
  { centre, radius, angle, name, error, at, turned }: Side,
  holed: boolean,
  width: number,
): void {
  const size = pen.style.labelSize;
  pen.stroke('outline', (trace) => trace.arc(centre, radius, -OPEN, OPEN));
  pen.line('centre', point(centre.x, centre.y + 2), onBearing(radius + 2, 0, centre));
  pen.line('fine', centre, onBearing(radius + 2, angle, centre));
  pen.circle('fine', centre, 0.7, 'ink');
  if (holed) {
    const hole = Math.min(1.6, (radius * angle) / 3);
    pen.circle('hidden', onBearing(radius, 0, centre), hole);
    pen.circle('outline', onBearing(radius, angle, centre), hole, 'paper');
  }
  // The error along the circle, between the two radii.
  const off = radius + 3;
  const arrow = Math.min(arrowLength(pen), (off * angle) / 2.4) / off;
  pen.stroke('dimension', (trace) => trace.arc(centre, off, -2.2 * arrow, angle + 2.2 * arrow));
  for (const [tip, way] of [
    [0, -1],
    [angle, 1],
  ] as const)
    arrowhead(pen, onBearing(off, tip, centre), onBearing(off, tip + way * arrow, centre));
  pen.text(error, onBearing(off + 0.5 * size + 1, angle / 2, centre), { sit: 'above', weight: 600 });
  const lines = wrapped(pen, name, width);
  const box = pen.text(lines, point(centre.x, centre.y + 2 + 0.7 * size), { sit: 'below', weight: 600 });
  const second = pen.text(at, point(centre.x, box.bottom + 0.2 * size), { sit: 'below' });
  pen.text(`out by ${turned}`, point(centre.x, second.bottom + 0.2 * size), { sit: 'below' });
}
