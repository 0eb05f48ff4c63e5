import { z } from 'zod';
import { taperOf } from '../../../geometry/trigonometry/slope.js';
import { arrow } from '../../drafting/arrow.js';
import { isClear } from '../../drafting/clear.js';
import { heightDimension, widthDimension } from '../../drafting/dimension.js';
import { legend } from '../../drafting/legend.js';
import { onBearing, type Point, point } from '../../drafting/point.js';
import { firstThatFits, scaleName, scalesNear } from '../../drafting/scale.js';
import { degrees, length as inWords, plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { length } from '../../given.js';
import { Pen } from '../../pen.js';
import { dimensionArc } from './angle-arc.js';

/** Where along the taper, from its large end, the arcs of its two angles cross the axis. */
const AT = { included: 0.3, half: 0.72 } as const;

/** Whether both arcs end on the sides of the taper itself, short of the small end. */
function isSlow(g: { largeDiameter: number; smallDiameter: number; length: number }): boolean {
  const half = Math.atan2((g.largeDiameter - g.smallDiameter) / 2, g.length);
  const beyond = g.smallDiameter / 2 / Math.tan(half);
  const reach = beyond + g.length * (1 - AT.half);
  return half <= Math.PI / 4 + 1e-9 && reach * Math.cos(half) >= beyond;
}

/** A taper from the side, with the angle of one side to the axis and of both sides to one another. */
export const taper = defineFigure({
  name: 'taper',
  title: 'A taper and its angles',
  given: z
    .strictObject({
      largeDiameter: length(0.5, 1000),
      smallDiameter: length(0, 1000),
      length: length(0.5, 2000),
    })
    .refine((g) => g.smallDiameter < g.largeDiameter, {
      path: ['smallDiameter'],
      message: 'less than the large diameter',
    })
    .refine(isSlow, { path: ['length'], message: 'long enough for its angles to be drawn within it' })
    .refine((g) => g.length <= 12 * g.largeDiameter, {
      path: ['length'],
      message: 'at most twelve times the large diameter',
    }),
  draw({ largeDiameter, smallDiameter, length }, style) {
    const found = taperOf(largeDiameter, smallDiameter, length);
    const mm = (value: number): string => inWords(value, style);
    const label =
      `Taper from ${mm(largeDiameter)} to ${mm(smallDiameter)} diameter in ${mm(length)}: each side leans by the half-angle, ` +
      `${degrees(found.halfAngle)}, and both together make the included angle, ${degrees(found.includedAngle)}.`;
    return firstThatFits(scalesNear(Math.max(length, 1.6 * largeDiameter), 95), style, (scale) => {
      const pen = new Pen(style);
      drawTaper(pen, {
        large: (largeDiameter / 2) * scale,
        small: (smallDiameter / 2) * scale,
        length: length * scale,
        half: found.halfAngle * (Math.PI / 180),
      });
      if (!isClear(pen)) return undefined;
      legend(pen, point(pen.extent.left, pen.extent.bottom + style.labelSize), [
        { letter: 'D', meaning: 'large diameter', value: mm(largeDiameter) },
        { letter: 'd', meaning: 'small diameter', value: mm(smallDiameter) },
        { letter: 'l', meaning: 'length of the taper', value: mm(length) },
        { letter: 'a', meaning: 'half-angle', value: degrees(found.halfAngle) },
        { letter: 'A', meaning: 'included angle', value: degrees(found.includedAngle) },
        { letter: 't', meaning: 'taper', value: `1 in ${plain(Number(found.lengthForOne.toFixed(2)))}` },
      ]);
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** As drawn: radii and length, mm, and the half-angle in radians. */
interface Cone {
  readonly large: number;
  readonly small: number;
  readonly length: number;
  readonly half: number;
}

/** The large end at x 0, the axis at y 0, the small end to the right. */
function drawTaper(pen: Pen, { large, small, length, half }: Cone): void {
  const size = pen.style.labelSize;
  pen.polygon('outline', [point(0, -large), point(length, -small), point(length, small), point(0, large)]);
  pen.line('centre', point(-4, 0), point(length + 4, 0));

  const out = Math.max(7, 2 * size);
  heightDimension(pen, { from: point(0, -large), to: point(0, large), x: -out, label: 'D', side: 'left' });
  if (small > 0)
    heightDimension(pen, {
      from: point(length, -small),
      to: point(length, small),
      x: length + out,
      label: 'd',
      side: 'right',
    });
  const y = large + Math.max(5, 1.6 * size);
  widthDimension(pen, { from: point(0, large), to: point(length, small), y, label: 'l' });

  // Both angles have their corner where the sides, carried on, would meet.
  const apex = point(length + small / Math.tan(half), 0);
  const west = 1.5 * Math.PI;
  angleAt(pen, apex, length * AT.half, half, { letter: 'a', from: west, above: large });
  angleAt(pen, apex, length * AT.included, half, { letter: 'A', from: west - half, above: large });
}

/** An arc from a bearing to the upper side, and its letter over the taper with a line to it. */
function angleAt(
  pen: Pen,
  apex: Point,
  x: number,
  half: number,
  { letter, from, above }: { letter: string; from: number; above: number },
): void {
  const size = pen.style.labelSize;
  const west = 1.5 * Math.PI;
  const radius = apex.x - x;
  dimensionArc(pen, apex, radius, from, west + half);
  const tip = onBearing(radius, west + half * 0.45, apex);
  const foot = point(tip.x + size, -above - Math.max(2.5, 0.8 * size));
  pen.text(letter, point(foot.x, foot.y - 0.3 * size), { sit: 'above', weight: 600 });
  arrow(pen, foot, tip);
}
