import { z } from 'zod';
import { onBearing, point } from '../../drafting/point.js';
import { fitting } from '../../drafting/scale.js';
import { length as inWords } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { length } from '../../given.js';
import { Pen } from '../../pen.js';

/** Twelve parts over eleven degrees: a part is five minutes less than a degree. */
const PARTS = 12;
const DEGREES = 11;
const MINUTES = 60 / PARTS;
/** Width of the strip, and how far its graduations reach out from its inner edge, mm. */
const REACH = { short: 3, long: 5 };

/** The vernier that goes with a disc of degrees: its inner edge lies against the disc. */
export const degreeVernier = defineFigure({
  name: 'degree-vernier',
  title: 'A vernier to five minutes',
  given: z.strictObject({ diameter: length(60, 600) }),
  draw({ diameter }, style) {
    const pen = new Pen(style);
    const size = style.labelSize;
    const inside = diameter / 2;
    const numbers = inside + REACH.long + 0.4 * size;
    const outside = numbers + pen.textSize('60').height + 0.8 * size;
    const half = (DEGREES / 2 / 180) * Math.PI;
    const at = (part: number): number => half * ((2 * part) / PARTS - 1);
    // Every third part is numbered where the figures have room, else the ends and the middle.
    const room = pen.textSize('60').width + 0.3 * size;
    const every = numbers * (at(3) - at(0)) > room ? 3 : numbers * (at(6) - at(0)) > room ? 6 : 12;
    for (let part = 0; part <= PARTS; part++) {
      const long = part % 3 === 0;
      pen.line(
        long ? 'fine' : 'dimension',
        onBearing(inside, at(part)),
        onBearing(inside + (long ? REACH.long : REACH.short), at(part)),
      );
      if (part % every !== 0) continue;
      const middle = onBearing(numbers + pen.textSize('0').height / 2, at(part));
      pen.text(String(part * MINUTES), middle, { weight: part === 0 ? 600 : 400 });
    }
    // The strip goes on at both ends, so that it can be held.
    const end = half + Math.max(6, room) / inside;
    pen.stroke('outline', (trace) => {
      trace.arc(point(0, 0), inside, -end, end).lineTo(onBearing(outside, end));
      trace.arc(point(0, 0), outside, end, -end).close();
    });
    const label =
      `The vernier for a disc of ${inWords(diameter, style)} at true scale: ${PARTS} parts over ${DEGREES} degrees, ` +
      `so that each reads ${MINUTES} minutes.`;
    return fitting(style, pen.finish(label, 'true scale'));
  },
});
