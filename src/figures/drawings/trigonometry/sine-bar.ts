import { z } from 'zod';
import { stackHeight } from '../../../geometry/trigonometry/slope.js';
import { alignedDimension } from '../../drafting/aligned.js';
import { arrow } from '../../drafting/arrow.js';
import { isClear } from '../../drafting/clear.js';
import { heightDimension } from '../../drafting/dimension.js';
import { hatch } from '../../drafting/hatch.js';
import { legend } from '../../drafting/legend.js';
import { onBearing, type Point, point } from '../../drafting/point.js';
import { firstThatFits, scaleName, scalesNear } from '../../drafting/scale.js';
import { degrees, length as inWords } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { length } from '../../given.js';
import { Pen } from '../../pen.js';
import { markAngle, nameAngle } from './angle-arc.js';

/** Radius of a roller, against the distance between the rollers. */
const ROLLER = 0.08;

/** A sine bar on its plate, one roller on a stack of gauge blocks. */
export const sineBar = defineFigure({
  name: 'sine-bar',
  title: 'A sine bar on its stack',
  given: z.strictObject({
    angle: z.number().min(3).max(70).describe('an angle in degrees, 3 to 70'),
    centres: length(10, 1000),
  }),
  draw({ angle, centres }, style) {
    const height = stackHeight(angle, centres);
    const mm = (value: number): string => inWords(value, style, 3);
    const label = `Sine bar of ${mm(centres)} between its rollers, set to ${degrees(angle)} by a stack ${mm(height)} high.`;
    return firstThatFits(scalesNear(centres, 90), style, (scale) => {
      const pen = new Pen(style);
      drawBar(pen, centres * scale, angle * (Math.PI / 180));
      if (!isClear(pen)) return undefined;
      legend(pen, point(pen.extent.left, pen.extent.bottom + style.labelSize), [
        { letter: 'L', meaning: 'roller to roller', value: mm(centres) },
        { letter: 'A', meaning: 'angle', value: degrees(angle) },
        { letter: 'h', meaning: 'stack', value: mm(height) },
      ]);
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** The centre of the roller on the plate at the origin; the bar rises to the right. */
function drawBar(pen: Pen, bar: number, angle: number): void {
  const size = pen.style.labelSize;
  const radius = ROLLER * bar;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  /** So far along the bar and so far above its line of rollers. */
  const at = (along: number, over: number): Point =>
    point(along * cos - over * sin, -along * sin - over * cos);
  const high = at(bar, 0);
  const plate = radius;
  const block = 1.5 * radius;
  const right = high.x + block + 6;

  hatch(
    pen,
    [
      [
        point(-3 * radius, plate),
        point(right, plate),
        point(right, plate + 3),
        point(-3 * radius, plate + 3),
      ],
    ],
    { spacing: 1.6 },
  );
  pen.line('outline', point(-3 * radius, plate), point(right, plate));
  pen.rectangle('outline', {
    left: high.x - block,
    right: high.x + block,
    top: high.y + radius,
    bottom: plate,
  });
  pen.polygon('outline', [
    at(-radius, 0.2 * radius),
    at(-radius, 2.4 * radius),
    at(bar + radius, 2.4 * radius),
    at(bar + radius, 0.2 * radius),
  ]);
  for (const centre of [point(0, 0), high]) {
    pen.circle('outline', centre, radius, 'paper');
    pen.circle('dimension', centre, 0.5, 'ink');
  }
  pen.line('centre', point(0, 0), high);
  pen.line('centre', point(0, 0), point(high.x - block - 1, 0));

  // Where the angle is too narrow for its letter, that stands under the plate, with a line to the arc.
  const level = point(bar, 0);
  if (Math.tan(angle / 2) * bar > 2 * pen.textSize('A').height)
    nameAngle(pen, 'A', point(0, 0), high, level, radius + 2);
  else {
    markAngle(pen, point(0, 0), high, level, bar / 2);
    const foot = point(0.5 * bar + size, plate + 3 + Math.max(3, size));
    arrow(pen, foot, onBearing(bar / 2, Math.PI / 2 - angle / 2));
    pen.text('A', point(foot.x, foot.y + 0.3 * size), { sit: 'below', weight: 600 });
  }

  alignedDimension(pen, {
    from: point(0, 0),
    to: high,
    aside: 2.4 * radius + Math.max(5, 1.4 * size),
    label: 'L',
    drops: [-2.4 * radius, -2.4 * radius],
  });
  heightDimension(pen, {
    from: point(high.x + block, high.y + radius),
    to: point(right, plate),
    x: right + Math.max(5, size),
    label: 'h',
    side: 'right',
  });
}
