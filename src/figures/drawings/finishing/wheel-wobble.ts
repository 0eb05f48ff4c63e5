import { z } from 'zod';
import { arrowhead, arrowLength } from '../../drafting/arrow.js';
import { type Point, point } from '../../drafting/point.js';
import { fitting } from '../../drafting/scale.js';
import { defineFigure } from '../../figure.js';
import { Pen } from '../../pen.js';

/** A wheel on its arbor, edge on, out of square; half a turn later it leans the other way. */
export const wheelWobble = defineFigure({
  name: 'wheel-wobble',
  title: 'A wheel that wobbles in the flat, edge on',
  given: z.strictObject({
    /** Far more than a wheel ever is out of square, or it could not be seen. */
    lean: z.number().min(3).max(12).default(7).describe('degrees as drawn, 3 to 12'),
  }),
  draw({ lean }, style) {
    const angle = (lean * Math.PI) / 180;
    const pen = new Pen(style);
    const size = style.labelSize;
    const radius = 3.4 * size;
    const half = Math.max(0.8, 0.2 * size);
    const [arbor, long] = [0.3 * size, 4.2 * size];
    pen.polygon('hidden', blade(-angle, radius, half));
    pen.rectangle('outline', { left: -long, right: long, top: -arbor, bottom: arbor }, 'paper');
    pen.polygon('outline', blade(angle, radius, half), 'paper');
    pen.line('centre', point(-long - 3, 0), point(long + 3, 0));
    // The pointer stands clear of the rim where it comes nearest.
    const near = radius * Math.sin(angle) + half * Math.cos(angle);
    const tip = point(near + 0.8, -radius * Math.cos(angle) + half);
    const tail = point(tip.x + 2.4 * arrowLength(pen), tip.y);
    pen.line('dimension', tail, tip);
    arrowhead(pen, tip, tail);
    pen.text('pointer', point(tail.x + 0.3 * size, tail.y), { anchor: 'start' });
    pen.text('dashes: half a turn on', point(0, radius + size), { sit: 'below' });
    const label =
      'A wheel on its arbor, seen edge on and out of square: past a pointer its rim goes to and fro, ' +
      'for half a turn on it leans the other way.';
    return fitting(style, pen.finish(label, 'not to scale'));
  },
});

/** A thin disc edge on, leaning to the right at the top. */
function blade(lean: number, radius: number, half: number): Point[] {
  const [sin, cos] = [Math.sin(lean), Math.cos(lean)];
  const corner = (along: number, across: number): Point =>
    point(along * sin + across * cos, -along * cos + across * sin);
  return [corner(radius, -half), corner(radius, half), corner(-radius, half), corner(-radius, -half)];
}
