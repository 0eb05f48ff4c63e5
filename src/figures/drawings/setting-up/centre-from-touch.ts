import { z } from 'zod';
import { dropToCentre } from '../../../geometry/setting-up/centring.js';
import { isClear } from '../../drafting/clear.js';
import { heightDimension } from '../../drafting/dimension.js';
import { legend } from '../../drafting/legend.js';
import { point } from '../../drafting/point.js';
import { firstThatFits, scaleName, scalesNear } from '../../drafting/scale.js';
import { length as inWords } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { length } from '../../given.js';
import { Pen } from '../../pen.js';

/** The cutter touching the top of the blank, and where it must go to stand at the centre. */
export const centreFromTouch = defineFigure({
  name: 'centre-from-touch',
  title: 'From a touch on the rim to the centre',
  given: z
    .strictObject({
      blankDiameter: length(1, 1000),
      cutterThickness: length(0.05, 200),
      feeler: length(0, 2).default(0),
    })
    .refine((g) => g.cutterThickness <= g.blankDiameter / 2, {
      path: ['cutterThickness'],
      message: 'at most half the blank',
    }),
  draw({ blankDiameter, cutterThickness, feeler }, style) {
    const drop = dropToCentre(blankDiameter, cutterThickness, feeler);
    const mm = (value: number): string => inWords(value, style, 3);
    const label =
      `End view of a blank of ${mm(blankDiameter)} with a cutter ${mm(cutterThickness)} thick touching its top` +
      `${feeler > 0 ? ` through a feeler of ${mm(feeler)}` : ''}; from there it moves ${mm(drop)} to the centre.`;
    return firstThatFits(scalesNear(blankDiameter, 46), style, (scale) => {
      const pen = new Pen(style);
      drawTouch(pen, (blankDiameter / 2) * scale, cutterThickness * scale, feeler * scale);
      if (!isClear(pen)) return undefined;
      legend(pen, point(pen.extent.left, pen.extent.bottom + style.labelSize), [
        { letter: 'D', meaning: 'diameter of the blank', value: mm(blankDiameter) },
        { letter: 't', meaning: 'thickness of the cutter', value: mm(cutterThickness) },
        ...(feeler > 0 ? [{ letter: 'f', meaning: 'feeler', value: mm(feeler) }] : []),
        {
          letter: 'y',
          meaning: `to move, D/2 + t/2${feeler > 0 ? ' + f' : ''}`,
          value: mm(drop),
        },
      ]);
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** The blank's axis stands at the origin; the cutter is seen on its edge. */
function drawTouch(pen: Pen, radius: number, thickness: number, feeler: number): void {
  const size = pen.style.labelSize;
  const reach = Math.max(26, pen.textSize('at the centre').width + 1);
  const right = radius + 2 + reach;
  const face = -radius - feeler;
  const middle = face - thickness / 2;
  pen.circle('outline', point(0, 0), radius);
  pen.line('centre', point(-radius - 3, 0), point(radius + 1.5, 0));
  pen.line('centre', point(0, -radius + 1), point(0, radius + 3));
  pen.rectangle('outline', { left: -4, right, top: face - thickness, bottom: face }, 'paper');
  pen.rectangle('hidden', { left: radius + 3, right, top: -thickness / 2, bottom: thickness / 2 });
  pen.line('centre', point(-7, middle), point(right + 3, middle));
  pen.line('centre', point(radius + 3, 0), point(right + 3, 0));
  const x = right + 3 + Math.max(4, size);
  heightDimension(pen, {
    from: point(right + 3, middle),
    to: point(right + 3, 0),
    x,
    label: 'y',
    side: 'right',
  });
  heightDimension(pen, {
    from: point(-1, -radius),
    to: point(-radius - 3, 0),
    x: -radius - 3 - Math.max(4, size),
    label: 'D/2',
    side: 'left',
  });
  const above = face - thickness - 0.5 * size;
  pen.text('touching', point(right, above), { anchor: 'end', sit: 'above' });
  const below = thickness / 2 + 0.5 * size;
  pen.text('at the centre', point(right, below), { anchor: 'end', sit: 'below' });
}
