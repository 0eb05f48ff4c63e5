import { CORNER, cutterPath, FORMS, largestTip, spaceFor } from '../../../calculations/cutting/space.js';
import { InputError } from '../../../diagnostics/errors.js';
import { endOf, type Path } from '../../../geometry/curves/path.js';
import { arrow } from '../../drafting/arrow.js';
import { heightDimension, lane, OVERRUN, widthDimension } from '../../drafting/dimension.js';
import { traceOutline } from '../../drafting/outline.js';
import { point } from '../../drafting/point.js';
import { length as inWords, plain } from '../../drafting/wording.js';
import { count, length, toothModule, word } from '../../given.js';
import type { Pen } from '../../pen.js';

/** What a cutter's form is drawn from. */
export const cutterShape = {
  teeth: count(12, 400),
  leaves: count(5, 100),
  module: toothModule(),
  depthForm: word(...FORMS).default('2.95'),
  tipRadius: length(0, 10).optional(),
};

interface CutterGiven {
  readonly teeth: number;
  readonly leaves: number;
  readonly module: number;
  readonly depthForm: (typeof FORMS)[number];
  readonly tipRadius?: number | undefined;
}

/** Sizes of the form, mm. */
export interface Form {
  readonly path: Path;
  /** Radius of the wheel's rim. */
  readonly rim: number;
  readonly depth: number;
  readonly dedendum: number;
  readonly halfPitch: number;
  readonly corner: number;
}

/** @throws {InputError} for a pinion larger than the wheel, or corners that the tip has no room for */
export function formOf(given: CutterGiven): Form {
  if (given.leaves > given.teeth)
    throw new InputError('leaves', given.leaves, `at most as many as the wheel has teeth, ${given.teeth}`);
  if ((given.tipRadius ?? 0) > largestTip(given))
    throw new InputError(
      'tipRadius',
      given.tipRadius,
      `a round that the tip has room for, ${plain(largestTip(given))} at most`,
    );
  const space = spaceFor(given);
  return {
    path: cutterPath(given),
    rim: space.rimRadius,
    depth: space.rimRadius - space.rootRadius,
    dedendum: space.pitchRadius - space.rootRadius,
    halfPitch: space.pitchRadius * Math.sin(space.halfAngle),
    corner: given.tipRadius ?? CORNER * given.module,
  };
}

/** The form in a sentence. */
export function formInWords(
  { teeth, module, leaves }: CutterGiven,
  form: Form,
  units: 'mm' | 'inch',
): string {
  const mm = (value: number): string => inWords(value, { units });
  return (
    `Cutting edge for the spaces of a wheel of ${teeth} teeth, module ${plain(module)}, pinion of ${leaves} leaves: ` +
    `${mm(2 * endOf(form.path).x)} wide at the rim, ${mm(2 * form.halfPitch)} at the pitch line, ` +
    `${mm(form.depth)} deep, corners of ${mm(form.corner)} radius.`
  );
}

/** How far the pitch line stands out beyond the form, and how far the middle line reaches up, mm on paper. */
const pastPitch = (pen: Pen): number => Math.max(5, 1.5 * pen.style.labelSize);
const aboveRim = (pen: Pen): number => lane(pen) + 4;

/** The form and its lines, without its sizes. The middle of the tip stands at the origin of the paper. */
export function drawEdge(pen: Pen, form: Form, scale: number): void {
  const rim = -form.depth * scale;
  const pitch = -form.dedendum * scale;
  pen.stroke('outline', (trace) => traceOutline(trace, form.path, point(0, 0), scale));
  const reach = Math.asin(endOf(form.path).x / form.rim);
  pen.stroke('hidden', (trace) =>
    trace.arc(point(0, rim + form.rim * scale), form.rim * scale, -reach, reach),
  );
  pen.line('centre', point(0, rim - aboveRim(pen) + 3), point(0, 2));
  const past = form.halfPitch * scale + pastPitch(pen);
  pen.line('centre', point(-past, pitch), point(past, pitch));
}

/** The same with what a maker measures. */
export function drawForm(pen: Pen, form: Form, scale: number): void {
  const size = pen.style.labelSize;
  const mm = (value: number): string => inWords(value, pen.style);
  const end = endOf(form.path);
  const [right, top] = [end.x * scale, -end.y * scale];
  const rim = -form.depth * scale;
  const pitch = -form.dedendum * scale;
  const half = form.halfPitch * scale;
  const past = pastPitch(pen);
  const above = rim - aboveRim(pen);

  drawEdge(pen, form, scale);
  pen.text(['pitch', 'line'], point(-half - past - 0.4 * size, pitch), { anchor: 'end' });
  widthDimension(pen, {
    from: point(-right, top),
    to: point(right, top),
    y: above,
    label: `at the rim ${mm(2 * end.x)}`,
  });
  widthDimension(pen, {
    from: point(-half, pitch),
    to: point(half, pitch),
    y: lane(pen) + 2.5,
    label: `at the pitch line ${mm(2 * form.halfPitch)}`,
  });
  const near = Math.max(right, half + past) + Math.max(3.5, size);
  heightDimension(pen, {
    from: point(half + past, pitch),
    to: point(half, 0),
    x: near,
    label: mm(form.dedendum),
    side: 'right',
  });
  heightDimension(pen, {
    from: point(right, rim),
    to: point(near, 0),
    x: near + OVERRUN + pen.textSize(mm(form.dedendum)).width + 0.8 * size,
    label: ['depth', mm(form.depth)],
    side: 'right',
  });
  if (form.corner > 0) noteCorner(pen, form, scale);
}

/** The radius of the corner, told from the left. */
function noteCorner(pen: Pen, form: Form, scale: number): void {
  const size = pen.style.labelSize;
  const left = -form.halfPitch * scale - Math.max(6, 2 * size);
  // Where a corner stands furthest out on the slant.
  const radius = form.corner * scale;
  const middle = point(-form.halfPitch * scale * (1 - form.dedendum / form.rim) + radius, -radius);
  const tip = point(middle.x - radius * Math.SQRT1_2, middle.y + radius * Math.SQRT1_2);
  const at = point(left, Math.max(tip.y, -0.4 * size));
  arrow(pen, at, point(left + 0.8 * size, at.y), tip);
  pen.text(['tip radius', inWords(form.corner, pen.style)], point(at.x - 0.35 * size, at.y), {
    anchor: 'end',
  });
}
