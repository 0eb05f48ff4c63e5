import { z } from 'zod';
import { heightDimension, OVERRUN } from '../drafting/dimension.js';
import { hatch } from '../drafting/hatch.js';
import { type Point, point } from '../drafting/point.js';
import { firstThatFits, scaleName } from '../drafting/scale.js';
import { Trace } from '../drafting/trace.js';
import { length, plain } from '../drafting/wording.js';
import { defineFigure } from '../figure.js';
import { toothModule } from '../given.js';
import { Pen } from '../pen.js';
import { type DrawnForm, depthFactor, drawnForms } from './wheel-forms.js';

/** The deepest form over module. */
const DEEPEST = Math.max(...Object.values(drawnForms).map(depthFactor));

/** The spaces that the four forms of wheel cutter leave, at one enlargement. */
export const depthForms = defineFigure({
  name: 'depth-forms',
  title: 'Four forms of wheel cutter and their depths',
  given: z.strictObject({ module: toothModule() }),
  draw({ module }, style) {
    const forms: readonly DrawnForm[] = Object.values(drawnForms);
    const said = forms.map((form) => `${form.name} ${length(depthFactor(form) * module, style)}`);
    const label = `Four forms of wheel cutter, module ${plain(module)}, with their full depths: ${said.join(', ')}.`;
    return firstThatFits(arrangements(module), style, ({ scale, across }) => {
      const pen = new Pen(style);
      for (let row = 0; row < forms.length; row += across) {
        drawRow(pen, forms.slice(row, row + across), module, scale, row === 0 ? 0 : pen.extent.bottom + 5);
      }
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** All four in a row as large as may be, else two rows of two. */
function arrangements(module: number): { scale: number; across: number }[] {
  const of = (
    across: number,
    scales: readonly number[],
    tallest: number,
  ): { scale: number; across: number }[] =>
    scales.filter((scale) => DEEPEST * module * scale <= tallest).map((scale) => ({ scale, across }));
  return [
    ...of(4, [100, 50, 20, 10], 60),
    ...of(2, [100, 50, 20, 10, 5], 40),
    ...of(4, [5, 2, 1], 60),
    ...of(2, [2, 1], Infinity),
  ];
}

/** A row of spaces whose tips stand on one level, each column as wide as its words. */
function drawRow(pen: Pen, forms: readonly DrawnForm[], module: number, scale: number, top: number): void {
  const unit = module * scale;
  const pitchLine = top + Math.max(...forms.map((form) => form.addendum)) * unit;
  const floor = pitchLine + Math.max(...forms.map((form) => form.dedendum)) * unit + 0.5 * unit + 2;
  let left = 0;
  for (const form of forms) {
    left = drawSpace(pen, form, { module, scale, left, pitchLine, floor }) + 1.5 * pen.style.labelSize;
  }
}

interface Place {
  readonly module: number;
  readonly scale: number;
  readonly left: number;
  readonly pitchLine: number;
  readonly floor: number;
}

/** One space between two half teeth on a straight pitch line, dimensioned and named. Gives back its right edge. */
function drawSpace(pen: Pen, form: DrawnForm, { module, scale, left, pitchLine, floor }: Place): number {
  const unit = module * scale;
  const tip = pitchLine - form.addendum * unit;
  const root = pitchLine + form.dedendum * unit;
  const right = left + Math.PI * unit;
  const half = (form.toothThickness * unit) / 2;

  const profile = (trace: Trace): Trace =>
    traceSpace(trace, form, unit, { left, right, half, tip, root, pitchLine });
  const metal = profile(new Trace()).lineTo(point(right, floor)).lineTo(point(left, floor));
  hatch(pen, metal.runs, { spacing: 1.8 });
  pen.stroke('outline', profile);
  pen.line('centre', point(left - 1.5, pitchLine), point(right + 1.5, pitchLine));

  const size = pen.style.labelSize;
  const lane = right + Math.max(3.5, size);
  heightDimension(pen, {
    from: point(right, tip),
    to: point(right, root),
    x: lane,
    label: 'h',
    side: 'right',
  });
  const dimensionEnd = lane + OVERRUN + 0.25 * size + pen.textSize('h').width;
  const name = pen.text(form.name, point(left, floor + 0.8 * size), {
    anchor: 'start',
    sit: 'below',
    weight: 600,
  });
  const depth = depthFactor(form);
  const sums = [`h = ${depth.toFixed(2)} × module`, `= ${length(depth * module, pen.style)}`];
  const { right: end } = pen.text(sums, point(left, name.bottom + 0.1 * size), {
    anchor: 'start',
    sit: 'below',
  });
  return Math.max(dimensionEnd, name.right, end);
}

function traceSpace(
  trace: Trace,
  form: DrawnForm,
  unit: number,
  at: { left: number; right: number; half: number; tip: number; root: number; pitchLine: number },
): Trace {
  const { left, right, half, tip, root, pitchLine } = at;
  const face = form.flankRadius * unit;
  const from: Point = point(left + half, pitchLine);
  const to: Point = point(right - half, pitchLine);
  trace.moveTo(point(left, tip)).bend(from, face, 'clockwise');
  if (form.roundBottom) {
    const radius = (to.x - from.x) / 2;
    const centre = point((from.x + to.x) / 2, root - radius);
    trace.lineTo(point(from.x, centre.y)).arc(centre, radius, -Math.PI / 2, -1.5 * Math.PI);
  } else {
    trace.lineTo(point(from.x, root)).lineTo(point(to.x, root));
  }
  return trace.lineTo(to).bend(point(right, tip), face, 'clockwise');
}
