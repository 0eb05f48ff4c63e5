import { z } from 'zod';
import { arrowhead, arrowLength } from '../../drafting/arrow.js';
import { isClear } from '../../drafting/clear.js';
import { heightDimension } from '../../drafting/dimension.js';
import { legend } from '../../drafting/legend.js';
import { onBearing, point } from '../../drafting/point.js';
import { firstThatFits, scalesNear } from '../../drafting/scale.js';
import { length as inWords } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { length, word } from '../../given.js';
import { Pen } from '../../pen.js';

/** The step as drawn, mm, at the smallest lettering: large enough to be seen, small against the bar. */
const STEP = 6;

/** A cut on each side of a bar, half a turn apart: they stand twice the error from each other. */
export const halfTurnTest = defineFigure({
  name: 'half-turn-test',
  title: 'The half-turn test',
  given: z
    .strictObject({
      diameter: length(1, 500),
      halfTurnStep: length(0.02, 50),
      /** Whether what the letters mean stands below; where there is no room the words beside it say so. */
      legend: word('yes', 'no').default('yes'),
    })
    .refine((g) => g.halfTurnStep <= g.diameter / 5, {
      path: ['halfTurnStep'],
      message: 'at most a fifth of the diameter',
    }),
  draw({ diameter, halfTurnStep, legend: said }, style) {
    const mm = (value: number): string => inWords(value, style, 3);
    const label =
      `End view of a bar of ${mm(diameter)} with a cut on each side, made half a turn apart: one stands ` +
      `${mm(halfTurnStep)} above the other, twice the ${mm(halfTurnStep / 2)} that the cutter is off centre.`;
    return firstThatFits(scalesNear(halfTurnStep, Math.max(STEP, 1.6 * style.labelSize)), style, (scale) => {
      const pen = new Pen(style);
      drawTest(pen, Math.max(22, 4.6 * style.labelSize), (halfTurnStep / 2) * scale);
      if (!isClear(pen)) return undefined;
      if (said === 'no') return pen.finish(label, 'not to scale');
      legend(pen, point(pen.extent.left, pen.extent.bottom + style.labelSize), [
        { letter: '1', meaning: 'first cut, after half a turn', value: '' },
        { letter: '2', meaning: 'second cut, cutter not moved', value: '' },
        { letter: 's', meaning: 'step from one to the other', value: mm(halfTurnStep) },
        { letter: 'e', meaning: 'cutter off centre, s/2', value: mm(halfTurnStep / 2) },
      ]);
      return pen.finish(label, scale >= 1 ? `step ${scale} : 1` : `step 1 : ${Math.round(1 / scale)}`);
    });
  },
});

/** The axis stands at the origin; the cutter is above it by the error. */
function drawTest(pen: Pen, radius: number, error: number): void {
  const size = pen.style.labelSize;
  const half = 1.6;
  const [deep, rim] = [0.62 * radius, (y: number) => Math.sqrt(radius ** 2 - y ** 2)];
  // The bar with a slot on either side.
  pen.stroke('outline', (trace) => {
    const corner = (y: number) => point(rim(y), y);
    const bearing = (x: number, y: number) => Math.atan2(x, -y);
    const [a, b] = [corner(-error - half), corner(-error + half)];
    const [c, d] = [point(-rim(error + half), error + half), point(-rim(error - half), error - half)];
    trace.moveTo(b);
    trace.arc(point(0, 0), radius, bearing(b.x, b.y), bearing(c.x, c.y) + 2 * Math.PI);
    trace.lineTo(point(-deep, c.y)).lineTo(point(-deep, d.y)).lineTo(d);
    trace.arc(point(0, 0), radius, bearing(d.x, d.y), bearing(a.x, a.y));
    trace.lineTo(point(deep, a.y)).lineTo(point(deep, b.y)).lineTo(b);
  });
  const past = radius + 3;
  pen.line('centre', point(-past, 0), point(past, 0));
  pen.line('centre', point(0, -past), point(0, past));
  pen.line('dimension', point(-past, -error), point(past, -error));
  pen.line('dimension', point(-past, error), point(past, error));
  const off = radius + 5 + Math.max(3, size);
  heightDimension(pen, {
    from: point(past, -error),
    to: point(past, error),
    x: off,
    label: 's',
    side: 'right',
  });
  heightDimension(pen, { from: point(-past, 0), to: point(-past, error), x: -off, label: 'e', side: 'left' });
  pen.text('2', point(0.4 * radius, -error - 0.7 * size), { sit: 'above', weight: 600 });
  pen.text('1', point(-0.4 * radius, error + 0.7 * size), { sit: 'below', weight: 600 });

  // Half a turn, over the top.
  const over = radius + 5;
  const [from, to] = [-1, 1];
  pen.stroke('dimension', (trace) => trace.arc(point(0, 0), over, from, to));
  arrowhead(pen, onBearing(over, to), onBearing(over, to - arrowLength(pen) / over));
  pen.text('half a turn', point(0, -over - 0.5 * size), { sit: 'above' });
}
