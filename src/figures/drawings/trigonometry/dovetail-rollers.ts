import { z } from 'zod';
import { overRollers } from '../../../geometry/trigonometry/dovetail.js';
import { breakLine } from '../../drafting/break-line.js';
import { isClear } from '../../drafting/clear.js';
import { heightDimension, lane, widthDimension } from '../../drafting/dimension.js';
import { legend } from '../../drafting/legend.js';
import { point } from '../../drafting/point.js';
import { firstThatFits, scaleName, scalesNear } from '../../drafting/scale.js';
import { degrees, length as inWords } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { length, word } from '../../given.js';
import { Pen } from '../../pen.js';
import { nameAngle } from './angle-arc.js';

const isMeasurable = (g: DovetailGiven): boolean => {
  const { cornerWidth, measurement, touch } = overRollers(
    g.kind,
    g.width,
    g.angle,
    g.rollerDiameter,
    g.depth,
  );
  return cornerWidth > 0 && measurement > 0 && touch <= g.depth;
};

interface DovetailGiven {
  readonly kind: 'male' | 'female';
  readonly width: number;
  readonly angle: number;
  readonly rollerDiameter: number;
  readonly depth: number;
}

/** A dovetail in section, with a roller in each corner. */
export const dovetailRollers = defineFigure({
  name: 'dovetail-rollers',
  title: 'A dovetail measured with rollers',
  given: z
    .strictObject({
      kind: word('male', 'female'),
      width: length(2, 1000),
      angle: z.number().min(35).max(80).describe('an angle in degrees, 35 to 80'),
      rollerDiameter: length(0.3, 200),
      depth: length(0.5, 300),
    })
    .refine(isMeasurable, {
      path: ['rollerDiameter'],
      message: 'rollers that fit the corners and touch the slopes',
    })
    .refine((g) => g.width <= 12 * g.depth, { path: ['width'], message: 'at most twelve times the depth' }),
  draw(given, style) {
    const { kind, width, angle, rollerDiameter, depth } = given;
    const found = overRollers(kind, width, angle, rollerDiameter, depth);
    const mm = (value: number): string => inWords(value, style);
    const male = kind === 'male';
    const label =
      `Section of a ${kind} dovetail, ${mm(width)} wide at its open face, ${mm(depth)} high at ${degrees(angle)}: ` +
      `${mm(found.measurement)} ${male ? 'over' : 'between'} rollers of ${mm(rollerDiameter)} in its corners.`;
    const widest = Math.max(width, found.cornerWidth, found.measurement);
    return firstThatFits(scalesNear(widest, 75), style, (scale) => {
      const pen = new Pen(style);
      drawDovetail(pen, {
        male,
        open: (width / 2) * scale,
        corner: (found.cornerWidth / 2) * scale,
        over: (found.measurement / 2) * scale,
        roller: (rollerDiameter / 2) * scale,
        height: depth * scale,
      });
      if (!isClear(pen)) return undefined;
      legend(pen, point(pen.extent.left, pen.extent.bottom + style.labelSize), [
        { letter: 'W', meaning: male ? 'wide side' : 'mouth', value: mm(width) },
        { letter: 'w', meaning: 'corner to corner', value: mm(found.cornerWidth) },
        { letter: 'h', meaning: 'height', value: mm(depth) },
        { letter: 'A', meaning: 'angle of the slope', value: degrees(angle) },
        { letter: 'D', meaning: 'rollers', value: mm(rollerDiameter) },
        {
          letter: 'M',
          meaning: male ? 'over the rollers' : 'between the rollers',
          value: mm(found.measurement),
        },
      ]);
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** Half widths, and heights, as drawn. */
interface Section {
  readonly male: boolean;
  readonly open: number;
  readonly corner: number;
  readonly over: number;
  readonly roller: number;
  readonly height: number;
}

/** The floor at y 0, the middle at x 0. */
function drawDovetail(pen: Pen, { male, open, corner, over, roller, height }: Section): void {
  const size = pen.style.labelSize;
  const base = Math.max(4, size);
  const reach = Math.max(open, corner, over) + Math.max(6, 2.2 * size);
  // Along the floor beside a male, along the open face beside a female.
  const shoulder = male ? 0 : -height;
  for (const side of [-1, 1]) {
    const at = (x: number, y: number) => point(side * x, y);
    pen.line('outline', at(0, male ? -height : 0), at(male ? open : corner, male ? -height : 0));
    pen.line('outline', at(open, -height), at(corner, 0));
    pen.line('outline', at(male ? corner : open, shoulder), at(reach, shoulder), at(reach, base));
    const centre = at(over + (male ? -roller : roller), -roller);
    pen.circle('outline', centre, roller);
    pen.circle('dimension', centre, 0.5, 'ink');
  }
  breakLine(pen, point(-reach, base), point(reach, base));

  // The angle at the lip, in the metal, is the same as in the corner: floor and open face are parallel.
  const lip = point(open, -height);
  const along = point(male ? open - 10 : open + 10, -height);
  nameAngle(pen, 'A', lip, along, point(corner, 0), 2.5);
  const room = pen.textSize('D');
  if (room.height + 2.6 < roller)
    pen.text('D', point(-over - (male ? -roller : roller), -roller - room.height / 2 - 1.3), { weight: 600 });

  const top = Math.min(-height, -2 * roller);
  const near = top - Math.max(4, 1.2 * size);
  const far = near - lane(pen) - 0.6;
  // The wider of the two goes outside.
  const levels = open < over ? { W: near, M: far } : { W: far, M: near };
  widthDimension(pen, { from: point(-open, -height), to: lip, y: levels.W, label: 'W' });
  widthDimension(pen, { from: point(-over, -roller), to: point(over, -roller), y: levels.M, label: 'M' });
  const below = base + Math.max(6, 2 * size);
  widthDimension(pen, { from: point(-corner, 0), to: point(corner, 0), y: below, label: 'w' });
  heightDimension(pen, {
    from: male ? lip : point(reach, -height),
    to: male ? point(reach, 0) : point(corner, 0),
    x: reach + Math.max(5, size),
    label: 'h',
    side: 'right',
  });
}
