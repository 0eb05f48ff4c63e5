import { z } from 'zod';
import { tailstockOver, taperOf } from '../../../geometry/trigonometry/slope.js';
import { alignedDimension } from '../../drafting/aligned.js';
import { isClear } from '../../drafting/clear.js';
import { heightDimension } from '../../drafting/dimension.js';
import { legend } from '../../drafting/legend.js';
import { type Point, point } from '../../drafting/point.js';
import { firstThatFits, scaleName, scalesNear } from '../../drafting/scale.js';
import { length as inWords } from '../../drafting/wording.js';
import { wrapped } from '../../drafting/wrap.js';
import { defineFigure } from '../../figure.js';
import { length } from '../../given.js';
import { Pen } from '../../pen.js';

/** Steepest slope of the work that centres in their holes will bear, for the drawing; change of radius over length. */
const STEEPEST = 0.18;

/** Work between centres from above, its tailstock end moved towards the operator. */
export const tailstockSetOver = defineFigure({
  name: 'tailstock-set-over',
  title: 'Setting the tailstock over',
  given: z
    .strictObject({
      largeDiameter: length(0.5, 500),
      smallDiameter: length(0, 500),
      taperLength: length(1, 2000),
      workLength: length(1, 2000),
    })
    .refine((g) => g.smallDiameter < g.largeDiameter, {
      path: ['smallDiameter'],
      message: 'less than the large diameter',
    })
    .refine((g) => g.workLength >= g.taperLength, {
      path: ['workLength'],
      message: 'at least the length of the taper',
    })
    .refine((g) => (g.largeDiameter - g.smallDiameter) / 2 <= STEEPEST * g.taperLength, {
      path: ['taperLength'],
      message: 'long enough for a taper that centres can bear, at most 10° to the axis',
    })
    .refine((g) => g.workLength <= 12 * g.largeDiameter && g.workLength >= 2 * g.largeDiameter, {
      path: ['workLength'],
      message: 'between two and twelve of the large diameter',
    }),
  draw(given, style) {
    const { largeDiameter, smallDiameter, taperLength, workLength } = given;
    const { setOver } = tailstockOver(largeDiameter, smallDiameter, taperLength, workLength);
    const { halfAngle } = taperOf(largeDiameter, smallDiameter, taperLength);
    const mm = (value: number): string => inWords(value, style);
    const label =
      `Work ${mm(workLength)} long between centres, seen from above, with the tailstock set over ${mm(setOver)} so that ` +
      `one side of its taper, ${mm(largeDiameter)} to ${mm(smallDiameter)} in ${mm(taperLength)}, runs with the bed.`;
    const scales = scalesNear(workLength, 90);
    const ways = [true, false].flatMap((diameters) => scales.map((scale) => ({ scale, diameters })));
    return firstThatFits(ways, style, ({ scale, diameters }) => {
      const pen = new Pen(style);
      drawWork(pen, {
        large: (largeDiameter / 2) * scale,
        small: (smallDiameter / 2) * scale,
        taper: taperLength * scale,
        work: workLength * scale,
        half: halfAngle * (Math.PI / 180),
        diameters,
      });
      if (!isClear(pen)) return undefined;
      legend(pen, point(pen.extent.left, pen.extent.bottom + style.labelSize), [
        { letter: 'D', meaning: 'large diameter', value: mm(largeDiameter) },
        { letter: 'd', meaning: 'small diameter', value: mm(smallDiameter) },
        { letter: 'l', meaning: 'length of the taper', value: mm(taperLength) },
        {
          letter: 'L',
          meaning: workLength > taperLength ? 'length of the work' : 'length of the work, all tapered',
          value: mm(workLength),
        },
        { letter: 'x', meaning: 'set-over, towards the operator', value: mm(setOver) },
      ]);
      return pen.finish(label, scaleName(scale));
    });
  },
});

interface Drawn {
  readonly large: number;
  readonly small: number;
  readonly taper: number;
  readonly work: number;
  readonly half: number;
  /** Whether there is room to dimension the diameters too. */
  readonly diameters: boolean;
}

/** The headstock's centre at the origin, the operator below; the work's axis falls to the right by the half-angle. */
function drawWork(pen: Pen, { large, small, taper, work, half, diameters }: Drawn): void {
  const size = pen.style.labelSize;
  const [cos, sin] = [Math.cos(half), Math.sin(half)];
  /** So far along the work and so far towards the operator's side of it. */
  const at = (along: number, aside: number): Point =>
    point(along * cos - aside * sin, along * sin + aside * cos);
  const start = work - taper;
  const outline = [
    at(0, -large),
    ...(start > 0 ? [at(start, -large)] : []),
    at(work, -small),
    at(work, small),
    ...(start > 0 ? [at(start, large)] : []),
    at(0, large),
  ];
  pen.polygon('outline', outline);
  if (start > 0) pen.line('fine', at(start, -large), at(start, large));
  pen.line('centre', at(-2, 0), at(work + 2, 0));

  const tail = at(work, 0);
  const cone = Math.max(6, 2 * size);
  const aside = cone + Math.max(3, size);
  const far = tail.x + aside + Math.max(10, 4 * size);
  pen.line('centre', point(-aside - 3, 0), point(far + 1, 0));
  // Centres stand along the bed, whichever way the work lies.
  pen.polygon('outline', [point(-cone, -cone / 2), point(0, 0), point(-cone, cone / 2)]);
  pen.polygon('outline', [
    point(tail.x + cone, tail.y - cone / 2),
    tail,
    point(tail.x + cone, tail.y + cone / 2),
  ]);

  heightDimension(pen, { from: point(far, 0), to: tail, x: far, label: 'x', side: 'right' });
  if (diameters) alignedDimension(pen, { from: at(0, large), to: at(0, -large), aside, label: 'D' });
  if (diameters && small > 0)
    alignedDimension(pen, { from: at(work, -small), to: at(work, small), aside, label: 'd' });
  const above = Math.max(5, 1.4 * size);
  const further = above + Math.max(7, 2.6 * size);
  const [shoulder, end] = [at(start, -large), at(work, -large)];
  const drops = [0, large - small] as const;
  alignedDimension(pen, { from: shoulder, to: end, aside: above, label: 'l', drops });
  if (start > 0) alignedDimension(pen, { from: at(0, -large), to: end, aside: further, label: 'L', drops });

  // The tool's path along the side that now runs with the bed.
  const level = at(work, small).y + 1;
  const path = point(at(start, large).x, level);
  pen.line('hidden', path, point(tail.x, level));
  // Under the middle of the path, but never under the tailstock's centre.
  const words = wrapped(pen, 'this side runs with the bed', 0.8 * work);
  const right = Math.min((path.x + tail.x + pen.textSize(words).width) / 2, tail.x - 0.3 * size);
  pen.text(words, point(right, level + 0.4 * size), { anchor: 'end', sit: 'below' });
}
