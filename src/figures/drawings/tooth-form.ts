import { z } from 'zod';
import { arrowLength } from '../drafting/arrow.js';
import { wave } from '../drafting/break-line.js';
import { onBearing } from '../drafting/point.js';
import { ENLARGEMENTS, firstThatFits, scaleName } from '../drafting/scale.js';
import { length as inWords, plain } from '../drafting/wording.js';
import { defineFigure } from '../figure.js';
import { count, length, toothModule } from '../given.js';
import { Pen } from '../pen.js';
import { dimensionTooth } from './tooth-form-dimensions.js';
import {
  checkFace,
  type DrawnTeeth,
  enlarged,
  type ToothShape,
  toothCorners,
  traceTooth,
} from './tooth-outline.js';

/** Taller than this and a figure crowds the words off a page, mm. */
const TALLEST = 75;

/** One and a half teeth of a clock wheel, much enlarged, with every height dimensioned. */
export const toothForm = defineFigure({
  name: 'tooth-form',
  title: 'The form of a clock-wheel tooth',
  given: z
    .strictObject({
      teeth: count(12, 1000),
      leaves: count(5, 60),
      module: toothModule(),
      addendum: length(0.01, 20),
      dedendum: length(0.01, 20),
      flankRadius: length(0.01, 50),
      toothThickness: length(0.01, 20).optional(),
    })
    .refine((g) => (g.toothThickness ?? 0) < 0.9 * Math.PI * g.module, {
      path: ['toothThickness'],
      message: 'teeth with spaces between them',
    }),
  draw(given, style) {
    const pitchRadius = (given.module * given.teeth) / 2;
    const pitch = Math.PI * given.module;
    const tooth = given.toothThickness ?? pitch / 2;
    const shape: ToothShape = {
      rootRadius: pitchRadius - given.dedendum,
      pitchRadius,
      tipRadius: pitchRadius + given.addendum,
      halfAngle: tooth / 2 / pitchRadius,
      faceRadius: given.flankRadius,
    };
    checkFace('flankRadius', shape);
    const depth = given.addendum + given.dedendum;
    const mm = (value: number): string => inWords(value, style);
    const label =
      `Tooth of a wheel of ${given.teeth} teeth, module ${plain(given.module)}, for a pinion of ${given.leaves} leaves: ` +
      `addendum ${mm(given.addendum)}, dedendum ${mm(given.dedendum)}, full depth ${mm(depth)}, ` +
      `tooth ${mm(tooth)}, space ${mm(pitch - tooth)}, face radius ${mm(given.flankRadius)}.`;
    const scales = ENLARGEMENTS.filter((scale) => scale === 1 || depth * scale <= TALLEST);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      const lowest = Math.min(given.addendum, given.dedendum) * scale;
      const legible = Math.min(tooth, pitch - tooth) * scale >= 2.6 * arrowLength(pen);
      if (!legible || lowest < pen.textSize('0').height + 0.45) return undefined;
      const drawn = enlarged(shape, scale);
      const teeth: DrawnTeeth = {
        shape: drawn,
        pitchAngle: (2 * Math.PI) / given.teeth,
        body: drawn.rootRadius - 0.6 * given.module * scale,
        end: 1.6 * drawn.halfAngle,
      };
      traceTeeth(pen, teeth);
      dimensionTooth(pen, teeth, { ...given, tooth, space: pitch - tooth });
      return pen.finish(label, scaleName(scale));
    });
  },
});

function traceTeeth(pen: Pen, { shape, pitchAngle, body, end }: DrawnTeeth): void {
  const centre = { x: 0, y: 0 };
  const half = toothCorners(shape, -pitchAngle);
  const rim = onBearing(shape.rootRadius, end);
  const [lowerLeft, lowerRight] = [onBearing(body, -pitchAngle), onBearing(body, end)];
  pen.stroke('outline', (trace) => {
    trace.moveTo(half.tip).bend(half.pitchAfter, shape.faceRadius, 'clockwise').lineTo(half.rootAfter);
    trace.arc(centre, shape.rootRadius, shape.halfAngle - pitchAngle, -shape.halfAngle);
    traceTooth(trace, shape, 0);
    trace.arc(centre, shape.rootRadius, shape.halfAngle, end);
  });
  pen.stroke('fine', (trace) => {
    wave(trace.moveTo(half.tip), half.tip, lowerLeft);
    wave(trace, lowerLeft, lowerRight);
    wave(trace, lowerRight, rim);
  });
  pen.line('centre', onBearing(shape.tipRadius + 3, 0), onBearing(body, 0));
  const past = 4 / shape.pitchRadius;
  pen.stroke('centre', (trace) => trace.arc(centre, shape.pitchRadius, -pitchAngle - past, shape.halfAngle));
}
