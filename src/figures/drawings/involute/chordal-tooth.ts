import { z } from 'zod';
import { chordalTooth } from '../../../geometry/involute/chordal.js';
import { heightDimension, widthDimension } from '../../drafting/dimension.js';
import { point } from '../../drafting/point.js';
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
  rowOfTeeth,
  SCALES,
} from './teeth.js';

const TALLEST = 45;

/** One tooth between the jaws of a gear-tooth vernier, its tongue on the tip. */
export const chordalToothFigure = defineFigure({
  name: 'chordal-tooth',
  title: 'Chordal thickness and addendum',
  given: z.strictObject({ teeth: count(8, 120), module: toothModule(), pressureAngle: pressureAngle() }),
  draw(given, style) {
    const sizes = chordalTooth(
      (given.module * given.teeth) / 2,
      Math.PI / (2 * given.teeth),
      (given.module * (given.teeth + 2)) / 2,
    );
    const thickness = inWords(sizes.chordalThickness, style, 3);
    const addendum = inWords(sizes.chordalAddendum, style, 3);
    const label =
      `A tooth of a wheel of ${given.teeth} teeth, module ${plain(given.module)}, in a gear-tooth vernier: tongue on ` +
      `the tip, jaws ${addendum} lower, where the tooth is ${thickness} thick, straight across.`;
    const scales = SCALES.filter((scale) => scale <= 1 || 4 * given.module * scale <= TALLEST);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      const wheel = drawnWheel(given, scale);
      if (wheel.module < 3) return undefined;
      const row = rowOfTeeth(wheel, 1);
      drawRow(pen, row, wheel.flanks.rootRadius - 0.8 * wheel.module);
      drawVernier(pen, wheel, sizes.chordalThickness * scale, sizes.chordalAddendum * scale, {
        thickness: [`s_c = ${thickness}`],
        addendum: [`h_c = ${addendum}`],
      });
      return pen.finish(label, scaleName(scale));
    });
  },
});

function drawVernier(
  pen: Pen,
  { flanks, module, pitchRadius, pitch }: DrawnWheel,
  thickness: number,
  addendum: number,
  words: { readonly thickness: readonly string[]; readonly addendum: readonly string[] },
): void {
  const size = pen.style.labelSize;
  const tip = -flanks.tipRadius;
  const chord = tip + addendum;
  const top = tip - 1.1 * module;
  const half = thickness / 2;
  for (const side of [-1, 1]) {
    const [face, back] = [side * half, side * (half + 0.5 * module)];
    pen.polygon(
      'outline',
      [point(face, chord), point(face, top), point(back, top), point(back, chord)],
      'paper',
    );
    pen.circle('dimension', point(face, chord), 0.6, 'ink');
  }
  const tongue = Math.min(0.6 * half, 0.4 * module);
  pen.polygon(
    'outline',
    [point(-tongue, tip), point(-tongue, top), point(tongue, top), point(tongue, tip)],
    'paper',
  );
  pen.line('fine', point(-half, chord), point(half, chord));
  arcAbout(pen, 'centre', pitchRadius, -0.5 * pitch, 0.5 * pitch);

  widthDimension(pen, {
    from: point(-half, top),
    to: point(half, top),
    y: top - Math.max(5, 1.8 * size),
    label: words.thickness,
  });
  heightDimension(pen, {
    from: point(tongue, tip),
    to: point(half, chord),
    x: half + 1.2 * module + Math.max(3, size),
    label: words.addendum,
    side: 'right',
  });
}
