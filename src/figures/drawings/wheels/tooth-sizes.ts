import { z } from 'zod';
import { MM_PER_INCH } from '../../../units/length.js';
import { hatch } from '../../drafting/hatch.js';
import { type Point, point } from '../../drafting/point.js';
import { Trace } from '../../drafting/trace.js';
import { plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { numbers, toothModule } from '../../given.js';
import { Pen } from '../../pen.js';
import { drawnForms } from '../wheel-forms.js';

/** Teeth of each size, white between sizes over the size of letters, and rim below the roots, mm. */
const TEETH = 3;
const GAP = 2;
const RIM = 1.5;
const FORM = drawnForms['2.95'];
/** The bars to lay a rule on, how far apart their ticks stand, mm, and what is printed at them. */
const BARS = {
  mm: { length: 30, tick: 10, say: '30\u2009mm' },
  inch: { length: MM_PER_INCH, tick: MM_PER_INCH / 4, say: '1\u2009in' },
} as const;

/** The same tooth in several sizes beside one another, on straight pitch lines, and two bars to prove the print. */
export const toothSizes = defineFigure({
  name: 'tooth-sizes',
  title: 'One tooth in several sizes',
  given: z.strictObject({ modules: numbers(toothModule(), 8, 'modules in mm') }),
  draw({ modules }, style) {
    const pen = new Pen(style);
    const said = modules.map((module) => `${plain(module)} with a pitch of ${pitchOf(module)}`);
    const tallest = Math.max(...modules);
    const lines = (module: number) => [`m = ${plain(module)}\u2009mm`, `p = ${pitchOf(module)}`];
    const widths = modules.map((module) =>
      Math.max(TEETH * Math.PI * module, pen.textSize(lines(module)).width),
    );
    let [left, pitchLine] = [0, 0];
    /** Goes on to a new row when there is no more room in this one. */
    const findRoom = (width: number): void => {
      if (left === 0 || left + width <= style.maxWidth - 1) return;
      left = 0;
      pitchLine = pen.extent.bottom + 2 * style.labelSize + FORM.addendum * tallest;
    };
    modules.forEach((module, at) => {
      const width = widths[at] ?? 0;
      findRoom(width);
      const floor = pitchLine + FORM.dedendum * tallest + RIM;
      drawTeeth(pen, module, { left, pitchLine, floor });
      pen.text(lines(module), point(left, floor + 0.6 * style.labelSize), { anchor: 'start', sit: 'below' });
      left += width + GAP * style.labelSize;
    });
    const { length, say } = BARS[style.units];
    findRoom(length + 3 * style.labelSize);
    drawBars(pen, point(left + 1.5 * style.labelSize, pitchLine - FORM.addendum * tallest));
    const label = `Teeth of one form: module ${said.join('; module ')}. Two bars, across and down, of ${say} each.`;
    return pen.finish(label, 'true scale');
  },
});

/** Two bars from a corner, across and down. */
function drawBars(pen: Pen, { x, y }: Point): void {
  const { length, tick, say } = BARS[pen.style.units];
  pen.line('outline', point(x + length, y), point(x, y), point(x, y + length));
  for (let at = tick; at <= length + 1e-9; at += tick) {
    pen.line('fine', point(x + at, y), point(x + at, y + 2));
    pen.line('fine', point(x, y + at), point(x + 2, y + at));
  }
  pen.text(say, point(x + length, y - 1), { anchor: 'end', sit: 'above' });
  pen.text(say, point(x - 1, y + length), { anchor: 'start', turn: -90, sit: 'above' });
}

const pitchOf = (module: number): string => `${(Math.PI * module).toFixed(2)}\u2009mm`;

function drawTeeth(
  pen: Pen,
  module: number,
  { left, pitchLine, floor }: { readonly left: number; readonly pitchLine: number; readonly floor: number },
): void {
  const pitch = Math.PI * module;
  const half = (FORM.toothThickness * module) / 2;
  const [tip, root] = [pitchLine - FORM.addendum * module, pitchLine + FORM.dedendum * module];
  const face = FORM.flankRadius * module;
  const right = left + TEETH * pitch;
  const profile = (trace: Trace): Trace => {
    trace.moveTo(point(left, root));
    for (let tooth = 0; tooth < TEETH; tooth++) {
      const middle = left + (tooth + 0.5) * pitch;
      trace.lineTo(point(middle - half, root)).lineTo(point(middle - half, pitchLine));
      trace
        .bend(point(middle, tip), face, 'clockwise')
        .bend(point(middle + half, pitchLine), face, 'clockwise');
      trace.lineTo(point(middle + half, root));
    }
    return trace.lineTo(point(right, root));
  };
  hatch(pen, profile(new Trace()).lineTo(point(right, floor)).lineTo(point(left, floor)).runs, {
    spacing: 1,
  });
  pen.stroke('outline', (trace) => void profile(trace));
}
