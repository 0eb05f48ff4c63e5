import { z } from 'zod';
import { onBearing, point } from '../../drafting/point.js';
import { firstThatFits, scaleName, scalesNear } from '../../drafting/scale.js';
import { length as inWords, plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { length } from '../../given.js';
import { Pen } from '../../pen.js';

/** Half of what is shown of the circle, degrees, and from hole to hole; the radius that is sought, mm. */
const HALF = 60;
const STEP = 30;
const RADIUS = 26;
/** Where the radii begin, in radii of the circle. */
const INNER = 0.55;

/** A pattern that was printed small, in dashes, over the right one: on the same radii, nearer to the middle. */
export const shrunkPattern = defineFigure({
  name: 'shrunk-pattern',
  title: 'A pattern printed small, over the right one',
  given: z.strictObject({
    diameter: length(1, 2000),
    percent: z.number().min(90).max(98).describe('what 100 came out as, 90 to 98').default(97),
  }),
  draw({ diameter, percent }, style) {
    const label =
      `Part of a circle of ${inWords(diameter, style)} with holes in it, and the same printed at ${plain(percent)} %, ` +
      'in dashes: its holes lie on the same radii, nearer to the middle.';
    return firstThatFits(scalesNear(diameter / 2, RADIUS), style, (scale) => {
      const pen = new Pen(style);
      const size = style.labelSize;
      const radius = (diameter / 2) * scale;
      const small = (radius * percent) / 100;
      if (radius > 2 * RADIUS || radius - small < 0.35) return undefined;
      const hole = Math.min(1.4, radius / 12);
      const half = (HALF * Math.PI) / 180;
      pen.stroke('outline', (trace) => trace.arc(point(0, 0), radius, -half, half));
      pen.stroke('hidden', (trace) => trace.arc(point(0, 0), small, -half, half));
      for (let degrees = -HALF + STEP / 2; degrees < HALF; degrees += STEP) {
        const at = (degrees * Math.PI) / 180;
        pen.line('centre', onBearing(INNER * radius, at), onBearing(radius + 3, at));
        pen.circle('outline', onBearing(radius, at), hole);
        pen.circle('hidden', onBearing(small, at), hole);
      }
      const foot = -INNER * radius * Math.cos(half - (STEP * Math.PI) / 360);
      pen.text(`dashes: printed at ${plain(percent)} %`, point(0, foot + 0.6 * size), { sit: 'below' });
      return pen.finish(label, scaleName(scale));
    });
  },
});
