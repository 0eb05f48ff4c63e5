import { z } from 'zod';
import { counted } from '../../units/words.js';
import { point } from '../drafting/point.js';
import { fitting } from '../drafting/scale.js';
import { wrapped } from '../drafting/wrap.js';
import { defineFigure } from '../figure.js';
import { count, numbers } from '../given.js';
import { Pen } from '../pen.js';
import { drawArms, drawTurn } from './index-plate-arms.js';
import { drawPlate, layOut } from './index-plate-circles.js';

/** The plate with its hole circle, the crank pin in its first hole, and the sector arms set. */
export const indexPlate = defineFigure({
  name: 'index-plate',
  title: 'Index plate and sector arms',
  given: z.strictObject({
    circle: count(3, 400),
    spaces: count(0, 4000),
    others: numbers(z.number().int().min(3).max(400), 10, 'counts of holes, each 3 to 400').optional(),
  }),
  draw({ circle, spaces, others = [] }, style) {
    const turns = Math.floor(spaces / circle);
    const rest = spaces % circle;
    const whole = counted(turns, 'whole turn');
    const inside = `${counted(rest, 'space')} = ${counted(rest + 1, 'hole')} inside the arms`;
    const caption =
      rest === 0
        ? `${turns === 0 ? 'whole turns only' : whole}: the pin comes back to its own hole`
        : turns === 0
          ? inside
          : `${inside}, after ${whole}`;
    const elsewhere = others.filter((holes) => holes !== circle).sort((a, b) => a - b);
    const label = `Index plate, the circle of ${circle} holes, crank pin in hole 0: ${caption}.`;

    const pen = new Pen(style);
    const layout = layOut(pen, circle, rest, elsewhere);
    drawPlate(pen, layout);
    if (rest > 0) drawArms(pen, layout, rest);
    drawTurn(pen, layout, rest > 0 ? rest / circle : 1);
    const size = style.labelSize;
    const below = pen.extent.bottom + 0.8 * size;
    const words = wrapped(pen, caption, style.maxWidth - 2, { weight: 600 });
    const { bottom } = pen.text(words, point(0, below), { sit: 'below', weight: 600 });
    const circles = elsewhere.length > 0 ? `; other circles ${elsewhere.join(', ')}` : '';
    const plate = wrapped(pen, `${circle}-hole circle${circles}`, style.maxWidth - 2);
    pen.text(plate, point(0, bottom + 0.3 * size), { sit: 'below' });
    return fitting(style, pen.finish(label, 'not to scale'));
  },
});
