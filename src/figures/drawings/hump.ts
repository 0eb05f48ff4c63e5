import { z } from 'zod';
import { arrowLength } from '../drafting/arrow.js';
import { breakLine } from '../drafting/break-line.js';
import { heightDimension, OVERRUN, widthDimension } from '../drafting/dimension.js';
import { hatch } from '../drafting/hatch.js';
import { point } from '../drafting/point.js';
import { ENLARGEMENTS, firstThatFits, scaleName } from '../drafting/scale.js';
import { sweep } from '../drafting/trace.js';
import { length as inWords } from '../drafting/wording.js';
import { defineFigure } from '../figure.js';
import { length } from '../given.js';
import { Pen } from '../pen.js';

/** How far the given hump may be from the geometry: half the last figure that is printed. */
const ROUNDING = 0.006;

const humpOf = (cutterDiameter: number, short: number): number =>
  cutterDiameter / 2 - Math.sqrt((cutterDiameter / 2) ** 2 - short ** 2);

/** The root left high at the far face, where the cutter's axis stopped short of it. */
export const hump = defineFigure({
  name: 'hump',
  title: 'The hump left by a short travel',
  given: z
    .strictObject({
      cutterDiameter: length(1, 300),
      short: length(0.1, 100),
      hump: length(0, 100),
      thickness: length(0.1, 300).optional(),
    })
    .refine((g) => g.short < g.cutterDiameter / 2, {
      path: ['short'],
      message: 'less than the radius of the cutter',
    })
    .refine((g) => Math.abs(g.hump - humpOf(g.cutterDiameter, g.short)) <= ROUNDING, {
      path: ['hump'],
      message: 'the height the cutter leaves so far from its axis, R − √(R² − s²)',
    }),
  draw(given, style) {
    const mm = (value: number): string => inWords(value, style);
    const label =
      `The cutter of ${mm(given.cutterDiameter)} diameter has stopped ${mm(given.short)} short of the far face; ` +
      `the root is left ${mm(given.hump)} high there.`;
    const scales = ENLARGEMENTS.filter((scale) => scale === 1 || given.short * scale <= 60);
    return firstThatFits([...scales, 0.5], style, (scale) => {
      const pen = new Pen(style);
      drawHump(pen, given, scale);
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** The far face stands at x 0, the bottom of the space at y 0, the cutter's axis `short` to the left of the face. */
function drawHump(
  pen: Pen,
  given: { cutterDiameter: number; short: number; hump: number; thickness?: number | undefined },
  scale: number,
): void {
  const size = pen.style.labelSize;
  const mm = (value: number): string => inWords(value, pen.style);
  const radius = (given.cutterDiameter / 2) * scale;
  const short = given.short * scale;
  const high = humpOf(given.cutterDiameter, given.short) * scale;
  const axis = point(-short, -radius);
  // Deep enough that the words by the far face clear the arrow of the hump.
  const body = Math.max(8, 1.7 * arrowLength(pen) + OVERRUN + 1.3 * size);
  const thickness = (given.thickness ?? Infinity) * scale;
  const left = -Math.min(thickness, short * 1.5 + 6);
  const reach = Math.asin(Math.min(1, given.short / (given.cutterDiameter / 2)));

  const cut = sweep(axis, radius, Math.PI / 2, Math.PI / 2 - reach);
  const leftEnd = point(left, 0);
  hatch(pen, [[leftEnd, point(0, 0), point(0, body), point(left, body)]], { spacing: 2 });
  hatch(pen, [[...cut, point(0, 0)]], { angle: -45, spacing: 1 });
  pen.line('hidden', point(-short, 0), point(0, 0));

  pen.stroke('fine', (trace) =>
    trace.arc(axis, radius, Math.PI - reach / 2, Math.PI + Math.min(reach * 0.8, 0.9)),
  );
  pen.stroke('outline', (trace) => {
    if (left < -short) trace.moveTo(leftEnd);
    trace.arc(axis, radius, Math.PI, Math.PI - reach).lineTo(point(0, body));
  });
  pen.line('fine', point(0, -high), point(0, -high - 5));
  if (left === -thickness) pen.line('outline', leftEnd, point(left, body));
  else breakLine(pen, leftEnd, point(left, body));
  breakLine(pen, point(left, body), point(0, body));

  const top = -high - Math.max(9, 2 * size);
  pen.line('centre', point(-short, body), point(-short, top));
  pen.text(
    ['axis of the cutter,', `radius ${mm(given.cutterDiameter / 2)}`],
    point(-short, top - 0.5 * size),
    {
      sit: 'above',
    },
  );
  heightDimension(pen, {
    from: point(0, -high),
    to: point(0, 0),
    x: Math.max(7, 2 * size),
    label: `hump ${mm(given.hump)}`,
    side: 'right',
  });
  pen.text('far face', point(0.6 * size, body), { anchor: 'start', sit: 'above' });
  widthDimension(pen, {
    from: point(-short, body),
    to: point(0, body),
    y: body + Math.max(6, 2 * size),
    label: `short by ${mm(given.short)}`,
  });
}
