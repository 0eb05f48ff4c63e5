import { z } from 'zod';
import { wheelFormNames } from '../../calculations/wheels/tooth-forms.js';
import { onBearing, point } from '../drafting/point.js';
import { fitting } from '../drafting/scale.js';
import { length as inWords, plain } from '../drafting/wording.js';
import { defineFigure } from '../figure.js';
import { count, toothModule, word } from '../given.js';
import { Pen } from '../pen.js';
import { depthFactor, drawnForms } from './wheel-forms.js';

/** Teeth of the cutter as drawn, and their depth as a share of its radius. */
const CUTTER_TEETH = 12;
const GULLET = 0.2;

/** A form cutter from the side, with what is stamped on it. */
export const cutterStamp = defineFigure({
  name: 'cutter-stamp',
  title: 'What the cutter says',
  given: z.strictObject({
    module: toothModule(),
    teethFrom: count(6, 1000).optional(),
    form: word(...wheelFormNames).default('2.95'),
  }),
  draw({ module, teethFrom, form }, style) {
    const pen = new Pen(style);
    const depth = depthFactor(drawnForms[form]) * module;
    const above = [`M ${plain(module)}`, 'WHEEL'];
    const below = [
      ...(teethFrom === undefined ? [] : [`${teethFrom} TEETH UP`]),
      `DEPTH ${inWords(depth, style)}`,
    ];
    const size = style.labelSize;
    const bore = Math.max(4, size);
    const gap = 0.7 * size;
    // The lettering stands between the bore and the gullets; its far corners set the size of the drawing.
    const corner = Math.max(
      ...[above, below].map((lines) => {
        const { width, height } = pen.textSize(lines, { weight: 600 });
        return Math.hypot(width / 2, bore + gap + height);
      }),
    );
    const radius = (corner + gap) / (1 - GULLET);
    pen.stroke('outline', (trace) => {
      const step = (2 * Math.PI) / CUTTER_TEETH;
      for (let i = 0; i < CUTTER_TEETH; i++) {
        const at = i * step;
        const tip = onBearing(radius, at);
        const heel = onBearing(radius * 0.97, at + step * 0.62);
        const gullet = onBearing(radius * (1 - GULLET), at + step * 0.8);
        const root = onBearing(radius * (1 - GULLET), at + step);
        if (i === 0) trace.moveTo(tip);
        else trace.lineTo(tip);
        trace
          .bend(heel, radius, 'clockwise')
          .lineTo(gullet)
          .bend(root, (radius * step * 0.2) / 1.2, 'anticlockwise');
      }
      trace.close();
    });
    pen.circle('outline', point(0, 0), bore);
    pen.text(above, point(0, -bore - gap), { sit: 'above', weight: 600 });
    pen.text(below, point(0, bore + gap), { sit: 'below', weight: 600 });
    const label = `Side of a wheel cutter, stamped: ${[...above, ...below].join(', ')}.`;
    return fitting(style, pen.finish(label, 'not to scale'));
  },
});
