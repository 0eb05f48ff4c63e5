import { arrowhead, arrowLength } from '../../drafting/arrow.js';
import { chainDimension } from '../../drafting/dimension.js';
import { legend } from '../../drafting/legend.js';
import { onBearing, point } from '../../drafting/point.js';
import { firstThatFits, scaleName } from '../../drafting/scale.js';
import { spread } from '../../drafting/spread.js';
import { length as inWords, plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { Pen } from '../../pen.js';
import { type Arbor, arborsInARow, type Part, reachOf, trainGiven, trainInWords } from './arbors.js';

/** True scale first, larger for small work; the widest wheel stays under this, mm on paper. */
const SCALES = [5, 2, 1, 0.5, 0.2, 0.1] as const;
const TALLEST = 75;

/** The pitch circles of a train seen from above, its arbors in one line, to scale. */
export const trainPlan = defineFigure({
  name: 'train-plan',
  title: 'A train in plan',
  given: trainGiven,
  draw(given, style) {
    const mm = (value: number): string => inWords(value, style);
    const label = `Plan of a train, module ${plain(given.module)}, pitch circles touching: ${trainInWords(given)}.`;
    const widest = 2 * Math.max(...arborsInARow(given, 1).map(({ wheel }) => wheel?.radius ?? 0));
    const scales = SCALES.filter((scale) => scale <= 0.1 || widest * scale <= TALLEST);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      const size = style.labelSize;
      const arbors = arborsInARow(given, scale);
      const [left, right] = reachOf(arbors);
      const high = (widest * scale) / 2;
      pen.line('centre', point(left - 4, 0), point(right + 4, 0));
      arbors.forEach((arbor, i) => drawArbor(pen, arbor, i % 2 === 0));
      nameArbors(pen, arbors, -high - Math.max(4, 1.5 * size));
      const distances = arbors.slice(1).map(({ x }, i) => (x - (arbors[i]?.x ?? 0)) / scale);
      chainDimension(
        pen,
        high + Math.max(5, 1.2 * size),
        arbors.map(({ x }, i) => ({
          at: point(x, high),
          ...(i < distances.length && { letter: `a_${i + 1}` }),
        })),
      );
      legend(
        pen,
        point(left, pen.extent.bottom + size),
        distances.map((distance, i) => ({
          letter: `a_${i + 1}`,
          meaning: 'centre distance',
          value: mm(distance),
        })),
      );
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** The pitch circles on one arbor, and which way it turns. */
function drawArbor(pen: Pen, { x, wheel, pinion }: Arbor, clockwise: boolean): void {
  const centre = point(x, 0);
  if (wheel) {
    pen.circle('outline', centre, wheel.radius);
    drawTurn(pen, x, wheel, clockwise);
  }
  if (pinion) pen.circle('outline', centre, pinion.radius);
  pen.circle('fine', centre, 0.6, 'ink');
}

/** A curved arrow low inside a wheel, where no name’s line passes; none in a wheel too small to show it. */
function drawTurn(pen: Pen, x: number, wheel: Part, clockwise: boolean): void {
  const radius = 0.8 * wheel.radius;
  const half = 0.45;
  if (2 * half * radius < 2.5 * arrowLength(pen)) return;
  const centre = point(x, 0);
  const [from, to] = clockwise ? [Math.PI - half, Math.PI + half] : [Math.PI + half, Math.PI - half];
  pen.stroke('fine', (trace) => trace.arc(centre, radius, from, to));
  const bend = (Math.sign(to - from) * arrowLength(pen)) / radius;
  arrowhead(pen, onBearing(radius, to, centre), onBearing(radius, to - bend, centre));
}

/** What each arbor carries, in a row over the wheels, with a line down to the arbor. */
function nameArbors(pen: Pen, arbors: readonly Arbor[], level: number): void {
  const size = pen.style.labelSize;
  const names = arbors.map(({ pinion, wheel }) =>
    [pinion, wheel].flatMap((part) => (part ? [part.name] : [])),
  );
  const places = spread(
    arbors.map(({ x }) => x),
    names.map((lines) => pen.textSize(lines).width + size),
  );
  for (const [i, { x }] of arbors.entries()) {
    const at = places[i] ?? x;
    pen.line('dimension', point(at, level + 0.3 * size), point(x, 0));
    pen.text(names[i] ?? [], point(at, level), { sit: 'above' });
  }
}
