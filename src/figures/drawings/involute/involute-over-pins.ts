import { z } from 'zod';
import { InputError } from '../../../diagnostics/errors.js';
import { turnedPath } from '../../../geometry/curves/path.js';
import { involuteOutline } from '../../../geometry/involute/outline.js';
import { overTwoPins, type Pin, pinInSpace, pinsThatServe } from '../../../geometry/involute/pins.js';
import { heightDimension } from '../../drafting/dimension.js';
import { traceOutline } from '../../drafting/outline.js';
import { type Point, point } from '../../drafting/point.js';
import { firstThatFits, scaleName } from '../../drafting/scale.js';
import { length as inWords, plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { count, length, toothModule } from '../../given.js';
import { Pen } from '../../pen.js';
import { type DrawnWheel, drawnWheel, pressureAngle, SCALES } from './teeth.js';

/** A wheel is drawn no larger across than this, mm. */
const WIDEST = 70;

/** An even and an odd count measured over two pins. */
export const involuteOverPins = defineFigure({
  name: 'involute-over-pins',
  title: 'Measurement over two pins',
  given: z.strictObject({
    teeth: count(6, 23),
    module: toothModule(),
    pressureAngle: pressureAngle(),
    pinDiameter: length(0.05, 20).optional(),
  }),
  draw(given, style) {
    const even = given.teeth + (given.teeth % 2);
    const odd = given.teeth + 1 - (given.teeth % 2);
    const pinDiameter = given.pinDiameter ?? 1.728 * given.module;
    const reading = (teeth: number): string => {
      const { flanks } = drawnWheel({ ...given, teeth }, 1);
      const { least, most } = pinsThatServe(flanks);
      const pin = pinInSpace(flanks, pinDiameter);
      if (!pin)
        throw new InputError('pinDiameter', pinDiameter, `${least.toFixed(3)} to ${most.toFixed(3)} mm`);
      return inWords(overTwoPins(teeth, pin), style);
    };
    const [overEven, overOdd] = [reading(even), reading(odd)];
    const pins = inWords(pinDiameter, style);
    const label =
      `Two wheels of module ${plain(given.module)} measured over pins of ${pins}: with ${even} teeth the pins stand ` +
      `opposite, over them ${overEven}; with ${odd} teeth half a tooth out of line, over them ${overOdd}.`;
    const largest = given.module * (Math.max(even, odd) + 4);
    const scales = SCALES.filter((scale) => scale <= 0.1 || largest * scale <= WIDEST);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      const size = style.labelSize;
      const [left, right] = [even, odd].map((teeth) => drawnWheel({ ...given, teeth }, scale)) as [
        DrawnWheel,
        DrawnWheel,
      ];
      if (left.module < 0.8) return undefined;
      const radius = Math.max(left.flanks.tipRadius, right.flanks.tipRadius) + 1.2 * left.module;
      const words = {
        even: [`even: ${even} teeth`, `M = ${overEven}`],
        odd: [`odd: ${odd} teeth`, `M = ${overOdd}`],
      };
      const widest = Math.max(...Object.values(words).map((lines) => pen.textSize(lines).width));
      const apart = Math.max(2 * radius + 4 * size + 8, widest + 6);
      const low = measured(pen, left, pinDiameter * scale, point(0, 0));
      measured(pen, right, pinDiameter * scale, point(apart, 0));
      const level = Math.max(low, radius) + 1.2 * size;
      pen.text(words.even, point(0, level), { sit: 'below' });
      const { bottom } = pen.text(words.odd, point(apart, level), { sit: 'below' });
      pen.text(`pins ${pins}`, point(apart / 2, bottom + 0.6 * size), { sit: 'below' });
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** A whole wheel, its two pins, and the flats of the micrometer over them. @returns how far down it reaches */
function measured(pen: Pen, wheel: DrawnWheel, pinDiameter: number, at: Point): number {
  const { teeth, module, angle, pitch } = wheel;
  const pin = pinInSpace(wheel.flanks, pinDiameter) as Pin;
  // An odd count is turned so that its two pins lean equally, and the reading is straight up.
  const lean = teeth % 2 === 0 ? 0 : pitch / 4;
  const outline = turnedPath(involuteOutline(teeth, module, angle), Math.PI / 2 - lean + pitch / 2);
  pen.stroke('outline', (trace) => traceOutline(trace, outline, at, 1));
  const side = pin.centre * Math.sin(lean);
  const up = pin.centre * Math.cos(lean);
  const middles = [point(at.x + side, at.y - up), point(at.x + side, at.y + up)];
  for (const middle of middles) {
    pen.circle('outline', middle, pinDiameter / 2, 'paper');
    pen.line('centre', at, middle);
  }
  const over = up + pinDiameter / 2;
  const reach = Math.max(2.2 * module, 0.35 * wheel.pitchRadius);
  for (const y of [at.y - over, at.y + over])
    pen.line('outline', point(at.x + side - reach, y), point(at.x + side + reach, y));
  const x = at.x - wheel.flanks.tipRadius - 3;
  const edge = at.x + side - reach;
  heightDimension(pen, {
    from: point(edge, at.y - over),
    to: point(edge, at.y + over),
    x,
    label: 'M',
    side: 'left',
  });
  return over;
}
