import { z } from 'zod';
import { onBearing, point } from '../../drafting/point.js';
import { fitting } from '../../drafting/scale.js';
import { length as inWords } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { length } from '../../given.js';
import { Pen } from '../../pen.js';
import { centreMark, graduations, numbersRound, stepFor } from './marks.js';

const CENTRE = point(0, 0);
/** Least difference between hole and disc: room for the largest figures, mm. */
const NUMBERS = 46;
/** How far the graduations reach in from the edge, mm. */
const REACH = [-3, -4.5, -6] as const;

/** A disc graduated in degrees, to be glued to a plate behind the work. */
export const degreeDisc = defineFigure({
  name: 'degree-disc',
  title: 'A disc of degrees',
  given: z
    .strictObject({ diameter: length(60, 600), hole: length(1, 300).default(10) })
    .refine((g) => g.hole <= g.diameter - NUMBERS, {
      path: ['hole'],
      message: `at least ${NUMBERS} mm less than the disc`,
    }),
  draw({ diameter, hole }, style) {
    const pen = new Pen(style);
    const size = style.labelSize;
    const edge = diameter / 2;
    pen.circle('outline', CENTRE, edge);
    graduations(pen, { centre: CENTRE, radius: edge, parts: 360, reach: REACH });
    const outer = edge + REACH[2];
    const band = Math.hypot(pen.textSize('350').width, pen.textSize('350').height) + 0.9 * size;
    degrees(pen, outer, (degree) => degree);
    const inner = outer - band;
    const [shelf, second] = [inner, inner - 0.8];
    // The second row runs the other way, where there is room for it and the hole.
    const both = second - band > hole / 2 + 8;
    if (both) {
      pen.circle('dimension', CENTRE, shelf);
      degrees(pen, second, (degree) => (360 - degree) % 360);
    }
    const reach = (both ? second - band : inner) - 0.5;
    pen.circle('outline', CENTRE, hole / 2);
    for (let quarter = 0; quarter < 4; quarter++) {
      const bearing = (quarter * Math.PI) / 2;
      pen.line('fine', onBearing(2, bearing), onBearing(reach, bearing));
    }
    centreMark(pen, CENTRE, 2);
    const label =
      `A disc of ${inWords(diameter, style)} at true scale, graduated in single degrees at its edge` +
      `${both ? ', numbered both ways' : ''}, with a hole of ${inWords(hole, style)}.`;
    return fitting(style, pen.finish(label, 'true scale'));
  },
});

/** A row of numbers within a radius. */
function degrees(pen: Pen, radius: number, numbered: (degree: number) => number): void {
  const size = pen.style.labelSize;
  const step = stepFor(pen, { radius: radius - size, parts: 360, widest: '350', steps: [10, 20, 30, 90] });
  const labels = Array.from({ length: 360 / step }, (_, at): [number, string] => [
    (2 * Math.PI * at * step) / 360,
    String(numbered(at * step)),
  ]);
  numbersRound(pen, { radius, side: 'inside', labels: new Map(labels) });
}
