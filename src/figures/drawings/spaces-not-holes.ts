import { z } from 'zod';
import { counted } from '../../units/words.js';
import { point } from '../drafting/point.js';
import { fitting } from '../drafting/scale.js';
import { defineFigure } from '../figure.js';
import { count } from '../given.js';
import { Pen } from '../pen.js';

/** Radius of a hole, mm on paper. */
const HOLE = 1.5;

/** A strip of holes: the spaces counted above it from 1, the holes below it from 0. */
export const spacesNotHoles = defineFigure({
  name: 'spaces-not-holes',
  title: 'Count spaces, not holes',
  given: z.strictObject({ spaces: count(1, 40).default(5) }),
  draw({ spaces }, style) {
    const pen = new Pen(style);
    const size = style.labelSize;
    const heads = ['spaces', 'holes'].map((head) => pen.textSize(head, { weight: 600 }).width);
    const start = Math.max(...heads) + 1.5 * size;
    const figure = pen.textSize(String(spaces)).width;
    const room = style.maxWidth - start - 2 * HOLE - 6;
    const pitch = Math.min(Math.max(11, figure + size), room / spaces);
    // Holes too close for every number keep every fifth.
    const every = pitch >= figure + 0.4 * size ? 1 : 5;
    const numbered = (i: number): boolean => i % every === 0 || i === spaces;
    const clear = (i: number): boolean => i === spaces || every === 1 || spaces - i >= every - 1;
    const x = (i: number): number => start + i * pitch;

    const hop = Math.min(3.2, pitch * 0.3);
    for (let i = 0; i <= spaces; i++) {
      pen.circle('outline', point(x(i), 0), HOLE, i === 0 ? 'ink' : undefined);
      if (numbered(i) && clear(i)) pen.text(String(i), point(x(i), HOLE + 0.6 * size), { sit: 'below' });
      if (i === spaces) continue;
      const [from, to] = [x(i) + 0.25, x(i + 1) - 0.25];
      const radius = ((to - from) ** 2 / 4 + hop ** 2) / 2 / hop;
      pen.stroke('dimension', (trace) =>
        trace
          .moveTo(point(from, -HOLE - 0.6))
          .bend(point(to, -HOLE - 0.6), Math.max(radius, (to - from) / 2), 'clockwise'),
      );
      const nth = i + 1;
      if (numbered(nth) && clear(nth)) {
        pen.text(String(nth), point((from + to) / 2, -HOLE - 0.6 - hop - 0.3 * size), { sit: 'above' });
      }
    }
    const armTop = -HOLE - hop - 0.6;
    for (const edge of [x(0) - HOLE - 0.8, x(spaces) + HOLE + 0.8]) {
      pen.line('outline', point(edge, armTop), point(edge, HOLE + 1));
    }
    const above = -HOLE - 0.6 - hop - 0.3 * size;
    pen.text('spaces', point(0, above), { anchor: 'start', sit: 'above', weight: 600 });
    pen.text('holes', point(0, HOLE + 0.6 * size), { anchor: 'start', sit: 'below', weight: 600 });
    const label = `${counted(spaces, 'space')} lie between ${counted(spaces + 1, 'hole')}, numbered 0 to ${spaces}.`;
    return fitting(style, pen.finish(label, 'not to scale'));
  },
});
