import { z } from 'zod';
import { flatsOnRound } from '../../../geometry/trigonometry/polygon.js';
import { isClear } from '../../drafting/clear.js';
import { heightDimension, lane, widthDimension } from '../../drafting/dimension.js';
import { hatch } from '../../drafting/hatch.js';
import { legend } from '../../drafting/legend.js';
import { onBearing, point } from '../../drafting/point.js';
import { firstThatFits, scaleName, scalesNear } from '../../drafting/scale.js';
import { sweep } from '../../drafting/trace.js';
import { length as inWords } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { count, length } from '../../given.js';
import { Pen } from '../../pen.js';

/** A square, a hexagon or another polygon as it comes from the round, with what is cut away for one flat. */
export const polygonFlats = defineFigure({
  name: 'polygon-flats',
  title: 'Flats from the round',
  given: z.strictObject({ diameter: length(0.5, 2000), sides: count(3, 12) }),
  draw({ diameter, sides }, style) {
    const flats = flatsOnRound(diameter, sides);
    const mm = (value: number): string => inWords(value, style);
    const across = sides % 2 === 0 ? 'across flats' : 'flat to corner';
    const label =
      `Polygon of ${sides} sides from a round of ${mm(diameter)}: ${mm(flats.acrossFlats)} ${across}, ` +
      `each flat ${mm(flats.depthOfFlat)} below the round and ${mm(flats.flatWidth)} wide.`;
    return firstThatFits(scalesNear(diameter, 55), style, (scale) => {
      const pen = new Pen(style);
      drawPolygon(pen, (diameter / 2) * scale, sides);
      if (!isClear(pen)) return undefined;
      legend(pen, point(pen.extent.left, pen.extent.bottom + style.labelSize), [
        { letter: 'D', meaning: 'round, across corners', value: mm(diameter) },
        { letter: 'AF', meaning: across, value: mm(flats.acrossFlats) },
        { letter: 't', meaning: 'depth of each flat', value: mm(flats.depthOfFlat) },
        { letter: 'b', meaning: 'width of each flat', value: mm(flats.flatWidth) },
      ]);
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** One flat stands upright on the right; the round is about the origin. */
function drawPolygon(pen: Pen, radius: number, sides: number): void {
  const size = pen.style.labelSize;
  const centre = point(0, 0);
  const half = Math.PI / sides;
  const corners = Array.from({ length: sides }, (_, i) =>
    onBearing(radius, Math.PI / 2 + (2 * i - 1) * half),
  );
  hatch(pen, [sweep(centre, radius, -half, half)], { spacing: 1.2 });
  pen.circle('fine', centre, radius);
  pen.polygon('outline', corners);
  const past = radius + 3;
  pen.line('centre', point(-past, 0), point(past, 0));
  pen.line('centre', point(0, -past), point(0, past));

  const flat = radius * Math.cos(half);
  const [upper, lower] = [onBearing(radius, Math.PI / 2 - half), onBearing(radius, Math.PI / 2 + half)];
  const opposite = sides % 2 === 0 ? -flat : -radius;
  const out = past + Math.max(3, size);
  widthDimension(pen, { from: upper, to: point(radius, 0), y: -out, label: 't' });
  heightDimension(pen, { from: upper, to: lower, x: out, label: 'b', side: 'right' });
  const far = sides % 2 === 0 ? radius * Math.sin(half) : 0;
  widthDimension(pen, { from: point(opposite, far), to: lower, y: out + 0.5 * size, label: 'AF' });
  widthDimension(pen, {
    from: point(-radius, 0),
    to: point(radius, 0),
    y: out + 0.5 * size + lane(pen) + 0.6,
    label: 'D',
  });
}
