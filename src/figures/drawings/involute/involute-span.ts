import { z } from 'zod';
import { InputError } from '../../../diagnostics/errors.js';
import { spanOver, spansThatServe, usualSpan } from '../../../geometry/involute/span.js';
import { widthDimension } from '../../drafting/dimension.js';
import { onBearing, point } from '../../drafting/point.js';
import { firstThatFits, scaleName } from '../../drafting/scale.js';
import { length as inWords, plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { count, toothModule } from '../../given.js';
import { Pen } from '../../pen.js';
import {
  arcAbout,
  type DrawnWheel,
  drawnWheel,
  drawRow,
  pressureAngle,
  rimUnder,
  rowOfTeeth,
  SCALES,
} from './teeth.js';

const TALLEST = 70;

/** A wheel between the discs of a micrometer, over several teeth. */
export const involuteSpan = defineFigure({
  name: 'involute-span',
  title: 'Span over several teeth',
  given: z.strictObject({
    teeth: count(12, 120),
    module: toothModule(),
    pressureAngle: pressureAngle(),
    spanTeeth: count(2, 20).optional(),
  }),
  draw(given, style) {
    const one = drawnWheel(given, 1);
    const spanned = given.spanTeeth ?? usualSpan(given.teeth, one.angle);
    const { least, most } = spansThatServe(one.flanks);
    if (spanned < least || spanned > most)
      throw new InputError('spanTeeth', spanned, `${least} to ${most} teeth for this wheel`);
    const span = inWords(spanOver(one.flanks, spanned), style);
    const label =
      `${spanned} teeth of an involute wheel of ${given.teeth}, module ${plain(given.module)}, between the flat ` +
      `anvils of a micrometer, which touch the flanks on a line tangent to the base circle: span ${span}.`;
    const scales = SCALES.filter(
      (scale) => scale <= 1 || heightOf(drawnWheel(given, scale), spanned) <= TALLEST,
    );
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      const wheel = drawnWheel(given, scale);
      if (wheel.module < 1) return undefined;
      drawSpan(pen, wheel, spanned, `W = ${span}`);
      return pen.finish(label, scaleName(scale));
    });
  },
});

const heightOf = (wheel: DrawnWheel, spanned: number): number =>
  wheel.flanks.tipRadius + 3 * wheel.module - rimUnder(wheel) * Math.cos(((spanned + 3) / 2) * wheel.pitch);

function drawSpan(pen: Pen, wheel: DrawnWheel, spanned: number, label: string): void {
  const { flanks, module } = wheel;
  const size = pen.style.labelSize;
  const row = rowOfTeeth(wheel, spanned + 2);
  const end = Math.atan2(row.start.x, row.start.y);
  drawRow(pen, row, rimUnder(wheel));
  arcAbout(pen, 'hidden', flanks.baseRadius, -end, end);
  arcAbout(pen, 'centre', wheel.pitchRadius, -end, end);

  // The anvils touch level with the top of the base circle.
  const half = spanOver(flanks, spanned) / 2;
  const touch = -flanks.baseRadius;
  const top = -flanks.tipRadius - 1.2 * module;
  pen.line('dimension', point(-half, touch), point(half, touch));
  for (const side of [-1, 1]) {
    const face = side * half;
    const corners = [
      point(face, touch + reachBelow(wheel, half)),
      point(face, top),
      point(face + side * 0.55 * module, top),
      point(face + side * 0.55 * module, touch + reachBelow(wheel, half)),
    ];
    pen.polygon('outline', corners, 'paper');
    pen.circle('dimension', point(face, touch), 0.6, 'ink');
  }
  numberTeeth(pen, wheel, spanned, half);
  widthDimension(pen, {
    from: point(-half, top),
    to: point(half, top),
    y: Math.min(top, -flanks.tipRadius - 1.6 * size) - Math.max(5, 1.6 * size),
    label,
  });
}

/** Numbers the teeth between the anvils; the first and last alone where there is no room for each. */
function numberTeeth(pen: Pen, { flanks, module, pitch }: DrawnWheel, spanned: number, half: number): void {
  const options = { size: 0.85 };
  const size = pen.style.labelSize;
  const roomy = Math.PI * module > 1.4 * size;
  for (let i = 0; i < spanned; i++) {
    if (!roomy && i > 0 && i < spanned - 1) continue;
    const radius = flanks.tipRadius + 0.8 * size;
    // The outermost stand close to the anvils, and clear of them.
    const most = half - pen.textSize(String(i + 1), options).width / 2 - 0.6;
    const wanted = onBearing(radius, (i - (spanned - 1) / 2) * pitch).x;
    const x = Math.min(most, Math.max(-most, wanted));
    pen.text(String(i + 1), point(x, -Math.sqrt(radius ** 2 - x ** 2)), options);
  }
}

/** An anvil goes a little past where it touches, and never to the bottom of the space. */
function reachBelow({ flanks, module }: DrawnWheel, half: number): number {
  const bottom = flanks.baseRadius - Math.sqrt(flanks.rootRadius ** 2 - half ** 2);
  return Math.min(0.4 * module, 0.6 * bottom);
}
