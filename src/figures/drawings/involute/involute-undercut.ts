import { z } from 'zod';
import { InputError } from '../../../diagnostics/errors.js';
import { turned } from '../../../geometry/curves/point.js';
import { rackRoot } from '../../../geometry/involute/root.js';
import { arrow } from '../../drafting/arrow.js';
import { point } from '../../drafting/point.js';
import { firstThatFits, scaleName } from '../../drafting/scale.js';
import { plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { count, toothModule } from '../../given.js';
import { Pen } from '../../pen.js';
import { type DrawnWheel, drawnWheel, drawRow, pressureAngle, rowOfTeeth, SCALES } from './teeth.js';

/** A tooth is drawn about so tall, mm. */
const TALLEST = 45;

/** A tooth of a small count, its foot cut away by the rack, beside one of a count large enough. */
export const involuteUndercut = defineFigure({
  name: 'involute-undercut',
  title: 'Undercut of a small count',
  given: z.strictObject({
    teeth: count(6, 31),
    largeTeeth: count(10, 120).default(30),
    module: toothModule(),
    pressureAngle: pressureAngle(),
  }),
  draw(given, style) {
    const undercut = (teeth: number): boolean =>
      rackRoot(teeth, 1, (given.pressureAngle * Math.PI) / 180).undercut;
    if (!undercut(given.teeth)) throw new InputError('teeth', given.teeth, 'a count that is undercut');
    if (undercut(given.largeTeeth))
      throw new InputError('largeTeeth', given.largeTeeth, 'a count that is not undercut');
    const label =
      `A tooth of a wheel of ${given.teeth} teeth, its foot cut away below the flank by the rack, beside a tooth ` +
      `of a wheel of ${given.largeTeeth}, whose flank is whole; pressure angle ${plain(given.pressureAngle)}°.`;
    const scales = SCALES.filter((scale) => scale <= 1 || 3 * given.module * scale <= TALLEST);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      const small = drawnWheel(given, scale);
      const large = drawnWheel({ ...given, teeth: given.largeTeeth }, scale);
      const words = {
        small: [`${given.teeth} teeth`, 'undercut'],
        large: [`${given.largeTeeth} teeth`, 'flank whole'],
      };
      const widest = Math.max(...Object.values(words).map((lines) => pen.textSize(lines).width));
      const half = 2.1 * small.module;
      const apart = 2 * half + Math.max(8, widest - 2 * half + 4);
      const level = 3.6 * small.module + 0.5 * style.labelSize;
      drawTooth(pen, small, 0);
      drawTooth(pen, large, apart);
      pen.text(words.small, point(0, level), { sit: 'below' });
      pen.text(words.large, point(apart, level), { sit: 'below' });
      pointAtNeck(pen, small, half);
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** One tooth with its tip at height nought and its middle at `x`. */
function drawTooth(pen: Pen, wheel: DrawnWheel, x: number): void {
  const { tipRadius, rootRadius } = wheel.flanks;
  drawRow(pen, rowOfTeeth(wheel, 1), rootRadius - 0.9 * wheel.module, point(x, tipRadius));
}

/** Names the narrow place beside the tooth, from its left. */
function pointAtNeck(pen: Pen, wheel: DrawnWheel, half: number): void {
  const root = rackRoot(wheel.teeth, wheel.module, wheel.angle);
  const wall = Array.from({ length: 60 }, (_, i) =>
    turned(root.at((root.meets * i) / 59), -Math.PI / wheel.teeth),
  );
  const neck = wall.reduce((best, p) => (Math.abs(p.y) < Math.abs(best.y) ? p : best));
  const tip = point(neck.y, wheel.flanks.tipRadius - neck.x);
  const size = pen.style.labelSize;
  const from = point(-half - 0.5 * size, tip.y);
  arrow(pen, from, tip);
  pen.text(['cut away', 'by the rack'], point(from.x - 0.3 * size, from.y), { anchor: 'end' });
}
