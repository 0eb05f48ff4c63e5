import { z } from 'zod';
import { fitArcs } from '../../../geometry/curves/fit-arcs.js';
import { involutePoint } from '../../../geometry/involute/involute.js';
import { notesAt } from '../../drafting/leader.js';
import { traceOutline } from '../../drafting/outline.js';
import { type Point, point } from '../../drafting/point.js';
import { firstThatFits, scaleName } from '../../drafting/scale.js';
import { length as inWords, plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { length } from '../../given.js';
import { Pen } from '../../pen.js';
import { CENTRE, SCALES } from './teeth.js';

/** The base circle is drawn no larger than this, mm. */
const WIDEST = 60;

/** Strings are drawn at so many places. */
const STRINGS = 4;

/** A string unwound from the base circle; its end draws the involute. */
export const involuteString = defineFigure({
  name: 'involute-string',
  title: 'The involute, drawn by a string',
  given: z.strictObject({
    baseDiameter: length(0.5, 500),
    unwound: z.number().min(30).max(90).default(75).describe('an angle in degrees, 30 to 90'),
  }),
  draw({ baseDiameter, unwound }, style) {
    const string = inWords((baseDiameter / 2) * ((unwound * Math.PI) / 180), style);
    const diameter = inWords(baseDiameter, style);
    const label =
      `A string unwound ${plain(unwound)}° from a base circle of ${diameter}: it stays tangent to the circle, is as ` +
      `long as the arc it left, ${string}, and its end draws the involute.`;
    const scales = SCALES.filter((scale) => scale <= 0.1 || baseDiameter * scale <= WIDEST);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      const radius = (baseDiameter / 2) * scale;
      if (radius < 7) return undefined;
      drawString(pen, radius, (unwound * Math.PI) / 180, { string, diameter });
      return pen.finish(label, scaleName(scale));
    });
  },
});

function drawString(
  pen: Pen,
  radius: number,
  roll: number,
  words: { readonly string: string; readonly diameter: string },
): void {
  const size = pen.style.labelSize;
  // The geometry starts on the right and unwinds anticlockwise, upwards on the paper.
  const onPaper = ({ x, y }: Point): Point => point(x, -y);
  const leaves = (t: number): Point => point(radius * Math.cos(t), -radius * Math.sin(t));
  const curve = fitArcs((t) => involutePoint(radius, t), 0, roll, 0.005);
  pen.circle('outline', CENTRE, radius);
  pen.line('centre', point(-radius - 3, 0), point(radius + 3, 0));
  pen.line('centre', point(0, -radius - 3), point(0, radius + 3));
  for (let i = 1; i <= STRINGS; i++) {
    const t = (roll * i) / STRINGS;
    const end = onPaper(involutePoint(radius, t));
    pen.line('dimension', leaves(t), end);
    pen.circle('dimension', leaves(t), 0.5, 'ink');
    pen.circle('dimension', end, 0.5, 'ink');
  }
  pen.stroke('outline', (trace) => traceOutline(trace, curve, CENTRE, 1));

  const last = onPaper(involutePoint(radius, roll));
  const between = (a: Point, b: Point): Point => point((a.x + b.x) / 2, (a.y + b.y) / 2);
  const onCurve = onPaper(involutePoint(radius, 0.8 * roll));
  const onCircle = point(radius * Math.cos(0.5), radius * Math.sin(0.5));
  notesAt(pen, Math.max(last.x, onCurve.x, radius) + Math.max(6, 2.2 * size), [
    { text: ['string, as long as the arc', `it left: ${words.string}`], tip: between(leaves(roll), last) },
    { text: 'involute', tip: onCurve },
    { text: ['base circle', `d_b = ${words.diameter}`], tip: onCircle },
  ]);
}
