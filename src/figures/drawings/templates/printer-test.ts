import { z } from 'zod';
import { MM_PER_INCH } from '../../../units/length.js';
import { type Point, point } from '../../drafting/point.js';
import { fitting } from '../../drafting/scale.js';
import { defineFigure } from '../../figure.js';
import { length } from '../../given.js';
import { Pen } from '../../pen.js';

const INCHES = 4;

/** A square with its circle and diagonals, and bars of four inches, to be measured before anything is cut. */
export const printerTest = defineFigure({
  name: 'printer-test',
  title: 'A square to try the printer by',
  given: z.strictObject({ side: length(80, 150).default(100) }),
  draw({ side }, style) {
    const pen = new Pen(style);
    const size = style.labelSize;
    const corners: readonly (readonly [string, Point, -1 | 1, -1 | 1])[] = [
      ['A', point(0, 0), -1, -1],
      ['B', point(side, 0), 1, -1],
      ['C', point(side, side), 1, 1],
      ['D', point(0, side), -1, 1],
    ];
    pen.rectangle('outline', { left: 0, top: 0, right: side, bottom: side });
    pen.circle('outline', point(side / 2, side / 2), side / 2);
    pen.line('fine', point(0, 0), point(side, side));
    pen.line('fine', point(side, 0), point(0, side));
    for (const [letter, at, x, y] of corners) {
      const { width, height } = pen.textSize(letter, { weight: 600 });
      const white = 0.3 * size;
      pen.text(letter, point(at.x + x * (width / 2 + white), at.y + y * (height / 2 + white)), {
        weight: 600,
      });
    }
    const beyond = side + pen.textSize('B', { weight: 600 }).width + 1.4 * size + 5;
    inchBar(pen, point(0, side + 2.4 * size + 5), 'across');
    inchBar(pen, point(beyond, 0), 'down');
    const label =
      `A square of ${side} mm with its diagonals and the circle that fits it, corners A, B, C and D, and two bars of ` +
      `${INCHES} inches, across and down.`;
    return fitting(style, pen.finish(label, 'true scale'));
  },
});

/** A bar of inches with a tick each half inch, from a place on. */
function inchBar(pen: Pen, from: Point, way: 'across' | 'down'): void {
  const size = pen.style.labelSize;
  const long = INCHES * MM_PER_INCH;
  const at = (along: number, aside: number): Point =>
    way === 'across' ? point(from.x + along, from.y + aside) : point(from.x + aside, from.y + along);
  pen.line('outline', at(0, 0), at(long, 0));
  for (let half = 0; half <= 2 * INCHES; half++) {
    const end = half === 0 || half === 2 * INCHES;
    pen.line(
      end ? 'outline' : 'fine',
      at((half * MM_PER_INCH) / 2, 0),
      at((half * MM_PER_INCH) / 2, half % 2 === 0 ? 4 : 2.4),
    );
  }
  const words = `${INCHES}\u2009in`;
  const middle = at(long / 2 + (way === 'across' ? MM_PER_INCH / 4 : 0), 4 + 0.4 * size);
  if (way === 'across') pen.text(words, middle, { sit: 'below' });
  else pen.text(words, middle, { turn: -90, sit: 'below' });
}
