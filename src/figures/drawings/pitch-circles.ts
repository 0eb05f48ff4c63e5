import { z } from 'zod';
import { widthDimension } from '../drafting/dimension.js';
import { point } from '../drafting/point.js';
import { firstThatFits, REDUCTIONS, scaleName } from '../drafting/scale.js';
import { length as inWords, plain } from '../drafting/wording.js';
import { defineFigure } from '../figure.js';
import { count, toothModule } from '../given.js';
import { Pen } from '../pen.js';

/** The pitch circles of a wheel and its pinion, touching on the line of centres. */
export const pitchCircles = defineFigure({
  name: 'pitch-circles',
  title: 'Pitch circles and centre distance',
  given: z.strictObject({ teeth: count(6, 1000), leaves: count(5, 200), module: toothModule() }),
  draw({ teeth, leaves, module }, style) {
    const mm = (value: number): string => inWords(value, style);
    const [wheelDiameter, pinionDiameter] = [module * teeth, module * leaves];
    const centres = (wheelDiameter + pinionDiameter) / 2;
    const label =
      `Pitch circles of a wheel of ${teeth} teeth, ${mm(wheelDiameter)}, and a pinion of ${leaves} leaves, ` +
      `${mm(pinionDiameter)}, module ${plain(module)}, touching: centre distance ${mm(centres)}.`;
    return firstThatFits(REDUCTIONS, style, (scale) => {
      const pen = new Pen(style);
      const size = style.labelSize;
      const wheel = (wheelDiameter / 2) * scale;
      const pinion = (pinionDiameter / 2) * scale;
      const [hub, arbor, touch] = [point(0, 0), point(wheel + pinion, 0), point(wheel, 0)];
      pen.circle('outline', hub, wheel);
      pen.circle('outline', arbor, pinion);
      const right = wheel + 2 * pinion + 4;
      pen.line('centre', point(-wheel - 4, 0), point(right, 0));
      pen.line('centre', point(0, -wheel - 3), point(0, wheel + 3));
      pen.line('centre', point(arbor.x, -pinion - 3), point(arbor.x, pinion + 3));

      const block = pen.textSize(['0', '0']).height;
      // Over the wheel, but never past the pitch point, whose own note begins there.
      const name = [`wheel, ${teeth} teeth`, `d = ${mm(wheelDiameter)}`];
      const over = Math.min(0, touch.x - 0.6 * size - pen.textSize(name).width / 2);
      pen.text(name, point(over, -wheel - 3 - 0.4 * size), { sit: 'above' });
      pen.text([`pinion, ${leaves} leaves`, `d = ${mm(pinionDiameter)}`], point(right + 0.6 * size, 0), {
        anchor: 'start',
      });
      // The common tangent is the one line that leaves the pitch point and touches neither circle again.
      const noteLevel = -Math.max(pinion + 3, block / 2) - 1.2 * size;
      pen.line('dimension', point(touch.x, noteLevel), touch);
      pen.circle('dimension', touch, 0.6, 'ink');
      pen.text('pitch point', point(touch.x, noteLevel - 0.2 * size), { anchor: 'start', sit: 'above' });
      widthDimension(pen, {
        from: point(0, wheel + 3),
        to: point(arbor.x, pinion + 3),
        y: Math.max(wheel, pinion) + 3 + Math.max(6, 2 * size),
        label: `centre distance a = ${mm(centres)}`,
      });
      return pen.finish(label, scaleName(scale));
    });
  },
});
