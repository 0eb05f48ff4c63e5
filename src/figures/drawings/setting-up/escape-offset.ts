import { z } from 'zod';
import { setOverForFace } from '../../../geometry/setting-up/centring.js';
import { textBeyond } from '../../drafting/aligned.js';
import { arrowhead, arrowLength } from '../../drafting/arrow.js';
import { breakLine } from '../../drafting/break-line.js';
import { isClear } from '../../drafting/clear.js';
import { widthDimension } from '../../drafting/dimension.js';
import { legend } from '../../drafting/legend.js';
import { onBearing, type Point, point } from '../../drafting/point.js';
import { firstThatFits, scaleName, scalesNear } from '../../drafting/scale.js';
import { degrees, length as inWords } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { count, length } from '../../given.js';
import { Pen } from '../../pen.js';

/** Depth of a tooth against its pitch round the rim, and flat left on its tip, degrees: as drawn, common practice. */
const DEPTH = 0.95;
const TIP = 0.5;

/** An escape wheel with the face of one tooth upright under the cutter, which stands to one side of the centre. */
export const escapeOffset = defineFigure({
  name: 'escape-offset',
  title: 'The cutter set over for a sloping face',
  given: z.strictObject({
    diameter: length(2, 500),
    faceAngle: z.number().min(3).max(25).describe('an angle in degrees, 3 to 25'),
    teeth: count(12, 60).default(30),
  }),
  draw({ diameter, faceAngle, teeth }, style) {
    const offset = setOverForFace(diameter, faceAngle);
    const mm = (value: number): string => inWords(value, style, 3);
    const label =
      `Escape wheel of ${teeth} teeth, ${mm(diameter)} over the tips: the edge of the cutter stands ${mm(offset)} ` +
      `to one side of the centre, and cuts a face that leans ${degrees(faceAngle)} from the radius.`;
    return firstThatFits(scalesNear(diameter, 62), style, (scale) => {
      const pen = new Pen(style);
      drawWheel(pen, (diameter / 2) * scale, (faceAngle * Math.PI) / 180, teeth);
      if (!isClear(pen)) return undefined;
      legend(pen, point(pen.extent.left, pen.extent.bottom + style.labelSize), [
        { letter: 'D', meaning: 'diameter over the tips', value: mm(diameter) },
        { letter: 'A', meaning: 'slope of the face', value: degrees(faceAngle) },
        { letter: 'b', meaning: 'set-over of its edge', value: mm(offset) },
      ]);
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** The wheel's axis stands at the origin; the face under the cutter is upright, to the right of it. */
function drawWheel(pen: Pen, radius: number, lean: number, teeth: number): void {
  const size = pen.style.labelSize;
  const offset = radius * Math.sin(lean);
  const pitch = (2 * Math.PI) / teeth;
  const root = radius - Math.min(DEPTH * radius * pitch, 0.4 * radius);
  // The face runs from the tip down a line that passes the axis by the offset, to the root circle.
  const foot = Math.asin(offset / root);
  const land = (TIP * Math.PI) / 180;
  const places: Point[] = [];
  for (let tooth = 0; tooth < teeth; tooth++) {
    const turn = tooth * pitch;
    places.push(onBearing(root, foot + turn), onBearing(radius, lean + turn));
    places.push(onBearing(radius, lean + turn + land));
  }
  pen.polygon('outline', places);

  // The cutter stands in the space before the face, and goes on above the drawing.
  const top = -radius - Math.max(9, 2 * size);
  const [bottom, before] = [onBearing(root, foot), onBearing(radius, lean - pitch + land)];
  const away = { x: before.x + ((before.x - bottom.x) * (top - before.y)) / (before.y - bottom.y), y: top };
  pen.line('hidden', point(offset, top), bottom, away);
  breakLine(pen, away, point(offset, top));
  pen.text('cutter', point(offset + 0.6 * size, (top - radius) / 2 - 0.2 * size), { anchor: 'start' });

  const over = top - Math.max(5, 1.2 * size);
  pen.line('centre', point(0, 4), point(0, over + 2));
  pen.line('centre', point(-4, 0), point(offset + 4, 0));
  pen.line('hidden', point(offset, 4), bottom);
  pen.line('fine', point(0, 0), onBearing(radius, lean));
  widthDimension(pen, { from: point(0, over + 2), to: point(offset, top), y: over, label: 'b' });

  // The slope at the tip is also the angle at the axis between the radius to the tip and the upright.
  const arc = 0.62 * root;
  const head = arrowLength(pen) / arc;
  pen.stroke('dimension', (trace) => trace.arc(point(0, 0), arc, -2.2 * head, lean + 2.2 * head));
  arrowhead(pen, onBearing(arc, 0), onBearing(arc, -head));
  arrowhead(pen, onBearing(arc, lean), onBearing(arc, lean + head));
  textBeyond(pen, 'A', onBearing(arc, -2.2 * head), point(-1, 0), 0.4 * size, { weight: 600 });

  const below = radius + Math.max(5, 1.4 * size);
  widthDimension(pen, { from: point(-radius, 0), to: point(radius, 0), y: below, label: 'D' });
}
