import { z } from 'zod';
import { cutOff } from '../../../geometry/trigonometry/circle.js';
import { textBeyond } from '../../drafting/aligned.js';
import { isClear } from '../../drafting/clear.js';
import { heightDimension, lane, widthDimension } from '../../drafting/dimension.js';
import { legend } from '../../drafting/legend.js';
import { onBearing, point } from '../../drafting/point.js';
import { firstThatFits, scaleName, scalesNear } from '../../drafting/scale.js';
import { degrees, length as inWords } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { length } from '../../given.js';
import { Pen } from '../../pen.js';
import { dimensionArc } from './angle-arc.js';

/** Chord, arc and sagitta of an angle at the centre of a circle. */
export const chord = defineFigure({
  name: 'chord',
  title: 'Chord, arc and sagitta',
  given: z
    .strictObject({
      diameter: length(0.1, 5000),
      divisions: z.number().int().min(2).max(18).describe('a whole number, 2 to 18').optional(),
      angle: z.number().min(20).max(330).describe('an angle in degrees, 20 to 330').optional(),
    })
    .refine((g) => (g.divisions === undefined) !== (g.angle === undefined), {
      path: ['divisions'],
      message: 'either divisions or angle',
    }),
  draw({ diameter, divisions, angle = 360 / (divisions ?? 1) }, style) {
    const cut = cutOff(diameter, angle);
    const mm = (value: number): string => inWords(value, style);
    const label =
      `Circle of ${mm(diameter)} diameter; an angle of ${degrees(angle)} at its centre cuts off a chord of ${mm(cut.chord)}, ` +
      `an arc of ${mm(cut.arc)} and a sagitta of ${mm(cut.sagitta)}.`;
    return firstThatFits(scalesNear(diameter, 60), style, (scale) => {
      const pen = new Pen(style);
      drawChord(pen, (diameter / 2) * scale, (angle / 2) * (Math.PI / 180));
      if (!isClear(pen)) return undefined;
      legend(pen, point(pen.extent.left, pen.extent.bottom + style.labelSize), [
        { letter: 'D', meaning: 'diameter of the circle', value: mm(diameter) },
        {
          letter: 'A',
          meaning: divisions === undefined ? 'angle at the centre' : `angle of one of ${divisions} divisions`,
          value: degrees(angle),
        },
        { letter: 'c', meaning: 'chord, straight across', value: mm(cut.chord) },
        { letter: 'b', meaning: 'arc, along the circle', value: mm(cut.arc) },
        { letter: 'h', meaning: 'sagitta', value: mm(cut.sagitta) },
      ]);
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** The circle about the origin, the chord level and the arc at the top; half the angle in radians. */
function drawChord(pen: Pen, radius: number, half: number): void {
  const size = pen.style.labelSize;
  const centre = point(0, 0);
  const [left, right, top] = [onBearing(radius, -half), onBearing(radius, half), onBearing(radius, 0)];
  pen.stroke('fine', (trace) => trace.arc(centre, radius, half, 2 * Math.PI - half));
  pen.stroke('outline', (trace) => trace.arc(centre, radius, -half, half));
  pen.line('outline', left, right);
  if (Math.abs(half - Math.PI / 2) > 1e-9) pen.line('fine', left, centre, right);

  // The letter stands where the angle is wide enough for it, and clear of the chord: short of it, or past it.
  const { width, height } = pen.textSize('A', { weight: 600 });
  const level = radius * Math.cos(half);
  const wide = Math.max(0.2 * radius, (width / 2 + 1) / Math.tan(Math.min(half, Math.PI / 2.2)));
  const past = level > 0 && level < wide + height + 1.5 ? Math.max(wide, level + 1.5) : wide;
  dimensionArc(pen, centre, past, -half, half);
  pen.text('A', point(0, -past - height / 2 - 0.7), { weight: 600 });

  // Lines from the chord's ends run clear of the circle: upwards for less than half a circle, else down.
  const up = half <= Math.PI / 2;
  const out = radius + lane(pen) + 0.5 * size;
  widthDimension(pen, { from: left, to: right, y: up ? -out : out, label: 'c' });
  const [west, east] = [point(-radius, 0), point(radius, 0)];
  widthDimension(pen, { from: west, to: east, y: up ? out : out + lane(pen) + 0.6, label: 'D' });
  heightDimension(pen, { from: right, to: top, x: radius + Math.max(4, size), label: 'h', side: 'right' });
  const quarter = onBearing(1, -half / 2);
  textBeyond(pen, 'b', onBearing(radius, -half / 2), quarter, 0.3 * size, { weight: 600 });
}
