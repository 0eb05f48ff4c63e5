import { z } from 'zod';
import { InputError } from '../../../diagnostics/errors.js';
import { arrow } from '../../drafting/arrow.js';
import { onBearing, type Point, point } from '../../drafting/point.js';
import { ENLARGEMENTS, firstThatFits, REDUCTIONS, scaleName } from '../../drafting/scale.js';
import { length as inWords } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { count, length } from '../../given.js';
import { Pen } from '../../pen.js';

/** Height of a tooth above and below the pitch circle, in pitches. */
const ADDENDUM = 0.4;
const DEDENDUM = 0.5;
/** A last tooth wider than so many pitches is no picture of a tooth. */
const WIDEST = 6;
/** Most of the wheel that is shown on each side, radians; and least width of a pitch on paper, mm. */
const REACH = 1.45;
const LEAST_PITCH = 2.5;

/** The last tooth of a wheel between its neighbours, fat, thin or gone, as the error of every step leaves it. */
export const closingGap = defineFigure({
  name: 'closing-gap',
  title: 'The last tooth, where the errors of all the steps meet',
  given: z.strictObject({
    divisions: count(12, 1000),
    stepErrorArcSeconds: z.number().min(-100_000).max(100_000).describe('arc seconds, -100000 to 100000'),
    diameter: length(2, 1000),
  }),
  draw({ divisions, stepErrorArcSeconds, diameter }, style) {
    const pitch = (2 * Math.PI) / divisions;
    const error = (stepErrorArcSeconds * Math.PI) / 648_000;
    const others = pitch / 2 + error;
    const last = Math.max(0, pitch / 2 - (divisions - 1) * error);
    const reachWith = (neighbours: number): number =>
      last / 2 + neighbours * (pitch / 2 + others) + pitch / 3;
    const neighbours = [2, 1].find((one) => reachWith(one) <= REACH);
    if (neighbours === undefined || last > WIDEST * pitch || others < 0.05 * pitch || others > 1.5 * pitch)
      throw new InputError(
        'stepErrorArcSeconds',
        stepErrorArcSeconds,
        `an error that leaves a last tooth of at most ${WIDEST} pitches and a third of the wheel, between teeth`,
      );
    const end = reachWith(neighbours);
    const mm = (angle: number): string => inWords((angle * diameter) / 2, style);
    const said = last === 0 ? 'no last tooth is left' : `the last tooth is ${mm(last)} thick`;
    const label = `Wheel of ${divisions} teeth where the last cut meets the first: ${said}, every other ${mm(others)}, a true one ${mm(pitch / 2)}.`;
    return firstThatFits([...ENLARGEMENTS, ...REDUCTIONS.slice(1)], style, (scale) => {
      const radius = (diameter / 2) * scale;
      if (pitch * radius < LEAST_PITCH) return undefined;
      const pen = new Pen(style);
      const [tip, root] = [radius * (1 + ADDENDUM * pitch), radius * (1 - DEDENDUM * pitch)];
      rim(pen, { teeth: teethOf(neighbours, { pitch, others, last }), end, tip, root });
      const beyond = 1.5 / radius;
      pen.stroke('centre', (trace) => trace.arc(point(0, 0), radius, -end - beyond, end + beyond));
      nameTeeth(pen, {
        tip: last === 0 ? point(0, -root - 0.6) : point(0, -tip - 0.4),
        top: -tip,
        name: last === 0 ? 'no last tooth left' : `last tooth ${mm(last)}`,
        other: onBearing(tip + 0.4, last / 2 + pitch / 2 + others / 2),
        note: `every other ${mm(others)}`,
      });
      nameCuts(pen, onBearing(root - 0.6, last / 2 + pitch / 4));
      return pen.finish(label, scaleName(scale));
    });
  },
});

type Edges = readonly [number, number];

/** Bearings of the two edges of each tooth from left to right, the last tooth upright in the middle. */
function teethOf(
  neighbours: number,
  { pitch, others, last }: { pitch: number; others: number; last: number },
): Edges[] {
  const right = Array.from({ length: neighbours }, (_, i): Edges => {
    const near = last / 2 + pitch / 2 + i * (pitch / 2 + others);
    return [near, near + others];
  });
  const left = right.map(([from, to]): Edges => [-to, -from]).reverse();
  return [...left, ...(last > 0 ? [[-last / 2, last / 2] as const] : []), ...right];
}

/** Names the last tooth from above it, and the one beside it from a line lower. */
function nameTeeth(
  pen: Pen,
  { tip, top, name, other, note }: { tip: Point; top: number; name: string; other: Point; note: string },
): void {
  const size = pen.style.labelSize;
  const level = top - 1.6 * size;
  pen.text(name, point(0, level - 1.7 * size), { sit: 'above', weight: 600 });
  arrow(pen, point(0, level - 1.5 * size), tip);
  const half = pen.textSize(note).width / 2;
  const x = Math.max(other.x, half + 0.8 * size);
  pen.text(note, point(x, level), { sit: 'above' });
  arrow(pen, point(Math.max(other.x, x - half + 0.3 * size), level + 0.2 * size), other);
}

/** Teeth and the spaces between them, broken off square at both ends. */
function rim(
  pen: Pen,
  how: { teeth: readonly (readonly [number, number])[]; end: number; tip: number; root: number },
): void {
  const { teeth, end, tip, root } = how;
  pen.stroke('outline', (trace) => {
    const centre = point(0, 0);
    let here = -end;
    trace.moveTo(onBearing(root, here));
    for (const [from, to] of teeth) {
      if (from - here > 1e-6) trace.arc(centre, root, here, from);
      trace.lineTo(onBearing(tip, from)).arc(centre, tip, from, to).lineTo(onBearing(root, to));
      here = to;
    }
    trace.arc(centre, root, here, end);
  });
}

/** Names the spaces on the two sides of the last tooth. */
function nameCuts(pen: Pen, space: Point): void {
  const size = pen.style.labelSize;
  for (const [way, name] of [
    [-1, 'last cut'],
    [1, 'first cut'],
  ] as const) {
    const tip = point(way * space.x, space.y);
    const room = pen.textSize(name).width / 2 + 0.4 * size;
    const x = way * Math.max(space.x, room);
    const y = tip.y + 1.6 * size + 2;
    arrow(pen, point(x, y - 0.2 * size), tip);
    pen.text(name, point(x, y), { sit: 'below' });
  }
}
