import { z } from 'zod';
import { notesAt } from '../../drafting/leader.js';
import { onBearing } from '../../drafting/point.js';
import { firstThatFits, scaleName } from '../../drafting/scale.js';
import { length as inWords, plain } from '../../drafting/wording.js';
import { defineFigure, type FigureStyle } from '../../figure.js';
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

/** Taller than this and a figure crowds the words off a page, mm. */
const TALLEST = 70;

interface Given {
  readonly teeth: number;
  readonly module: number;
  readonly pressureAngle: number;
}

/** The four circles of a wheel, from the outside in, and the radius of each as drawn. */
function circlesOf({ flanks, pitchRadius }: DrawnWheel) {
  const circles = [
    { name: 'tip circle', letter: 'd_a', kind: 'fine', radius: flanks.tipRadius },
    { name: 'pitch circle', letter: 'd', kind: 'centre', radius: pitchRadius },
    { name: 'root circle', letter: 'd_f', kind: 'fine', radius: flanks.rootRadius },
    { name: 'base circle', letter: 'd_b', kind: 'hidden', radius: flanks.baseRadius },
  ] as const;
  return circles.toSorted((a, b) => b.radius - a.radius);
}

/** A few involute teeth, enlarged, with the four circles that they are made from. */
export const involuteToothFigure = defineFigure({
  name: 'involute-tooth',
  title: 'Involute teeth and their four circles',
  given: z.strictObject({
    teeth: count(6, 120),
    module: toothModule(),
    pressureAngle: pressureAngle(),
  }),
  draw(given, style) {
    const scales = SCALES.filter((scale) => scale <= 1 || heightOf(drawnWheel(given, scale)) <= TALLEST);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      const wheel = drawnWheel(given, scale);
      drawTeeth(pen, wheel, scale);
      return pen.finish(spoken(given, style), scaleName(scale));
    });
  },
});

/** Three teeth, or one where three would go more than a quarter round. */
const shown = ({ teeth }: DrawnWheel): number => (teeth > 10 ? 3 : 1);

function heightOf(wheel: DrawnWheel): number {
  const end = ((shown(wheel) + 1) / 2) * wheel.pitch;
  return wheel.flanks.tipRadius - rimUnder(wheel) * Math.cos(end);
}

function drawTeeth(pen: Pen, wheel: DrawnWheel, scale: number): void {
  const row = rowOfTeeth(wheel, shown(wheel));
  const end = Math.atan2(row.start.x, row.start.y);
  drawRow(pen, row, rimUnder(wheel));
  const circles = circlesOf(wheel);
  const past = end + 5 / wheel.pitchRadius;
  for (const { kind, radius } of circles) arcAbout(pen, kind, radius, -end - 2 / wheel.pitchRadius, past);
  const tips = circles.map(({ radius }) => onBearing(radius, past));
  const column = Math.max(...tips.map(({ x }) => x)) + Math.max(6, 2.2 * pen.style.labelSize);
  notesAt(
    pen,
    column,
    circles.map(({ name, letter, radius }, i) => ({
      text: [name, `${letter} = ${inWords((2 * radius) / scale, pen.style)}`],
      tip: tips[i] ?? { x: 0, y: 0 },
    })),
  );
}

function spoken(given: Given, style: FigureStyle): string {
  const circles = circlesOf(drawnWheel(given, 1)).map(
    ({ name, radius }) => `${name} ${inWords(2 * radius, style)}`,
  );
  return (
    `Teeth of an involute wheel of ${given.teeth} teeth, module ${plain(given.module)}, ` +
    `pressure angle ${plain(given.pressureAngle)}°: ${circles.join(', ')}.`
  );
}
