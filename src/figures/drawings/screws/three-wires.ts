import { z } from 'zod';
import { shapeOf } from '../../../calculations/screws/forms.js';
import { InputError } from '../../../diagnostics/errors.js';
import { flattened, shifted } from '../../../geometry/curves/path.js';
import { reach } from '../../../geometry/screws/measure.js';
import type { ThreadShape } from '../../../geometry/screws/profile.js';
import { threadSizes } from '../../../geometry/screws/thread.js';
import { overWires, wiresFor } from '../../../geometry/screws/wires.js';
import { arrow } from '../../drafting/arrow.js';
import { breakLine } from '../../drafting/break-line.js';
import { heightDimension, lane } from '../../drafting/dimension.js';
import { hatch } from '../../drafting/hatch.js';
import { legend } from '../../drafting/legend.js';
import { type Point, point } from '../../drafting/point.js';
import { ENLARGEMENTS, firstThatFits, scaleName } from '../../drafting/scale.js';
import { defineFigure } from '../../figure.js';
import { length } from '../../given.js';
import { Pen } from '../../pen.js';
import { fine, isThread, nameOf, notThread, threadGiven } from './given.js';
import { threadRow } from './thread-row.js';

/** Taller than this and a figure crowds the words off a page, mm. */
const TALLEST = 75;

/** A thinner wire than this is no more than a dot, mm as drawn. */
const THINNEST = 0.8;

/** Ridges along the piece of screw that is drawn. */
const RIDGES = 5;

/** A screw of more pitches across than this has its middle left out, or its thread could not be seen. */
const MOST_PITCHES = 9;

interface Sizes {
  readonly shape: ThreadShape;
  readonly diameter: number;
  readonly pitchDiameter: number;
  readonly wire: number;
  readonly over: number;
}

/** A screw in section between three wires. */
export const threeWires = defineFigure({
  name: 'three-wires',
  title: 'A thread measured over three wires',
  given: z
    .strictObject({ ...threadGiven, wireDiameter: length(0.05, 20).optional() })
    .refine(isThread, notThread),
  draw(given, style) {
    const shape = shapeOf(given.series, given.pitch, 'screw');
    const wires = wiresFor(shape);
    const wire = given.wireDiameter ?? wires.best;
    if (wire < wires.smallest || wire > wires.largest)
      throw new InputError(
        'wireDiameter',
        wire,
        'a wire that rests on the flanks and stands above the crests',
      );
    const sizes: Sizes = {
      shape,
      diameter: given.majorDiameter,
      pitchDiameter: threadSizes(given.majorDiameter, shape).pitchDiameter,
      wire,
      over: overWires(given.majorDiameter, shape, wire),
    };
    const mm = (value: number): string => fine(value, style);
    const label =
      `A screw, ${nameOf(given)}, pitch ${mm(given.pitch)}, in section, with two wires of ${mm(wire)} in the grooves ` +
      `on one side and one on the other: ${mm(sizes.over)} over the wires.`;
    const left = Math.max(0, given.majorDiameter - MOST_PITCHES * given.pitch);
    const scales = [...ENLARGEMENTS, 0.5, 0.2].filter((scale) => (sizes.over - left) * scale <= TALLEST);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      if (wire * scale < THINNEST) return undefined;
      const foot = drawWires(pen, sizes, left, scale);
      legend(pen, point(pen.extent.left, foot + style.labelSize), [
        { letter: 'd', meaning: 'major diameter', value: mm(sizes.diameter) },
        { letter: 'd_2', meaning: 'pitch diameter', value: mm(sizes.pitchDiameter) },
        { letter: 'P_t', meaning: 'pitch', value: mm(given.pitch) },
        { letter: 'w', meaning: 'wires', value: mm(wire) },
        { letter: 'w_b', meaning: 'best wire', value: mm(wires.best) },
        { letter: 'M', meaning: 'over the wires', value: mm(sizes.over) },
      ]);
      return pen.finish(label, left > 0 ? `${scaleName(scale)}, the middle left out` : scaleName(scale));
    });
  },
});

/** Draws the screw about its axis at level 0, with so much of its middle left out, and gives back its lowest level. */
function drawWires(pen: Pen, sizes: Sizes, left: number, scale: number): number {
  const size = pen.style.labelSize;
  const { shape, wire } = sizes;
  const pitch = shape.pitch * scale;
  const end = RIDGES * pitch;
  const [half, outer, pitchLevel] = [sizes.over, sizes.diameter, sizes.pitchDiameter].map(
    (across) => ((across - left) / 2) * scale,
  ) as [number, number, number];
  const radius = (wire / 2) * scale;
  // Half a turn on, the ridge stands opposite the groove.
  const top = edgeOf(shape, 0, scale, outer);
  const bottom = edgeOf(shape, 1, scale, outer).map(({ x, y }) => point(x, -y));
  const gap = left > 0 ? 2.5 : 0;
  for (const edge of [top, bottom]) {
    const side = edge === top ? -1 : 1;
    const inner = [point(end, side * gap), point(0, side * gap)] as const;
    hatch(pen, [[...edge, ...inner]], { spacing: 2.4 });
    pen.line('outline', ...edge);
    breakLine(pen, edge.at(-1) ?? inner[0], inner[0]);
    breakLine(pen, edge[0] ?? inner[1], inner[1]);
    if (gap > 0) breakLine(pen, ...inner);
  }
  pen.line('centre', point(-4, 0), point(end + 4, 0));

  const centres = [
    point(2 * pitch, radius - half),
    point(3 * pitch, radius - half),
    point(2.5 * pitch, half - radius),
  ];
  for (const centre of centres) pen.circle('outline', centre, radius, 'paper');
  for (const level of [-half, half]) pen.line('fine', point(pitch, level), point(4 * pitch, level));

  heightDimension(pen, {
    from: point(4 * pitch, -half),
    to: point(4 * pitch, half),
    x: end + 4 + Math.max(3, size),
    label: 'M',
    side: 'right',
  });
  const inner = -4 - Math.max(3, size);
  const tall = (level: number, x: number, letter: string) =>
    heightDimension(pen, { from: point(0, -level), to: point(0, level), x, label: letter, side: 'left' });
  for (const level of [-pitchLevel, pitchLevel]) pen.line('centre', point(0, level), point(end, level));
  tall(pitchLevel, inner, 'd_2');
  tall(outer, inner - lane(pen) - pen.textSize('d_2').width, 'd');
  const note = point(3 * pitch + radius + 1.5 * size, -half - 1.5 * size);
  const touch = point(3 * pitch + radius * Math.SQRT1_2, radius - half - radius * Math.SQRT1_2);
  arrow(pen, note, touch);
  pen.text('w', point(note.x + 0.3 * size, note.y), { anchor: 'start' });
  return half;
}

/** The thread along the top of the piece, so many half pitches on; its crests at a height above the axis, as drawn. */
function edgeOf(shape: ThreadShape, halves: number, scale: number, height: number): Point[] {
  const row = shifted(threadRow(shape, RIDGES + halves), { x: (-halves * shape.pitch) / 2, y: 0 });
  const { highest } = reach(row);
  return flattened(row, 0.01 / scale)
    .filter(({ x }) => x > -1e-9 && x < RIDGES * shape.pitch + 1e-9)
    .map(({ x, y }) => point(x * scale, (highest - y) * scale - height));
}
