import { z } from 'zod';
import { InputError } from '../../../diagnostics/errors.js';
import { counted } from '../../../units/words.js';
import { arrowhead, arrowLength } from '../../drafting/arrow.js';
import { onBearing, point } from '../../drafting/point.js';
import { fitting } from '../../drafting/scale.js';
import { wrapped } from '../../drafting/wrap.js';
import { defineFigure } from '../../figure.js';
import { count, word } from '../../given.js';
import { Pen } from '../../pen.js';
import { coarseness } from '../index-plate-circles.js';

/** One circle of the plate with its move; `outward` is the side on which its arrow and numbers stand. */
interface Ring {
  readonly circle: number;
  readonly holes: number;
  readonly back: boolean;
  readonly radius: number;
  readonly outward: 1 | -1;
}

const HOLE = 1.1;

/** A plate with its two circles, and a move on each: from hole 0 to where the pin goes. */
export const compoundMoves = defineFigure({
  name: 'compound-moves',
  title: 'Compound indexing: two moves on one plate',
  given: z.strictObject({
    circle1: count(3, 200),
    holes1: count(1, 199),
    circle2: count(3, 200),
    holes2: count(1, 199),
    sense: word('forward', 'back'),
    turns: count(0, 500).default(0),
  }),
  draw({ circle1, holes1, circle2, holes2, sense, turns }, style) {
    if (holes1 >= circle1)
      throw new InputError('holes1', holes1, `fewer spaces than the circle’s ${circle1}`);
    if (holes2 >= circle2)
      throw new InputError('holes2', holes2, `fewer spaces than the circle’s ${circle2}`);
    if (circle1 === circle2) throw new InputError('circle2', circle2, 'another circle than circle1');
    const pen = new Pen(style);
    const size = style.labelSize;
    const moves = [
      { circle: circle1, holes: holes1, back: false },
      { circle: circle2, holes: holes2, back: sense === 'back' },
    ].sort((a, b) => a.circle - b.circle);
    const coarse = coarseness(pen);
    const figure = pen.textSize('00');
    // Arrow, then numbers, on the free side of each circle.
    const band = HOLE * coarse + 1.2 * arrowLength(pen) + figure.width + 0.8 * size;
    const rings = moves.map((move, i): Ring => {
      const least = i === 0 ? band + 5 * coarse : 0;
      return {
        ...move,
        outward: i === 0 ? -1 : 1,
        radius: Math.max(least, (2.3 * coarse * move.circle) / 2 / Math.PI),
      };
    });
    const [inner, outer] = rings as [Ring, Ring];
    const most = style.maxWidth / 2 - band - 1;
    const radius = Math.min(most, Math.max(outer.radius, inner.radius + 5 * coarse));
    const drawn: [Ring, Ring] = [
      { ...inner, radius: Math.min(inner.radius, radius - 4.2 * coarse) },
      { ...outer, radius },
    ];
    for (const ring of drawn) drawRing(pen, ring, coarse);
    pen.circle('outline', point(0, 0), radius + band);
    pen.circle('fine', point(0, 0), 1.2 * coarse);

    const place = (circle: number): string => (circle === outer.circle ? 'outer' : 'inner');
    const whole = turns === 0 ? '' : `${counted(turns, 'whole turn')} and `;
    const lines = [
      `Move 1: ${whole}${counted(holes1, 'space')} forward on the ${circle1}-hole circle (${place(circle1)})`,
      `Move 2: ${counted(holes2, 'space')} ${sense} on the ${circle2}-hole circle (${place(circle2)})`,
    ];
    let y = pen.extent.bottom + 0.8 * size;
    for (const line of lines) {
      const words = wrapped(pen, line, style.maxWidth - 2, { weight: 600 });
      y = pen.text(words, point(0, y), { sit: 'below', weight: 600 }).bottom + 0.3 * size;
    }
    const label = `Index plate with circles of ${inner.circle} and ${outer.circle} holes. ${lines.join('. ')}.`;
    return fitting(style, pen.finish(label, 'not to scale'));
  },
});

function drawRing(pen: Pen, { circle, holes, back, radius, outward }: Ring, coarse: number): void {
  const step = (2 * Math.PI) / circle;
  const goal = back ? circle - holes : holes;
  const hole = Math.min(HOLE * coarse, radius * Math.sin(Math.PI / circle) * 0.64);
  for (let i = 0; i < circle; i++) {
    const at = onBearing(radius, i * step);
    pen.circle('fine', at, hole, i === 0 ? 'ink' : undefined);
    if (i === goal) pen.circle('fine', at, hole * 0.35, 'ink');
  }
  // The arrow's arc lies just off the holes, from hole 0 to the goal.
  const arc = radius + outward * (hole + 0.45 * arrowLength(pen));
  const to = (back ? -1 : 1) * holes * step;
  const head = Math.min(Math.abs(to) * 0.999, arrowLength(pen) / arc) * Math.sign(to);
  pen.stroke('fine', (trace) => trace.arc(point(0, 0), arc, 0, to - head / 2));
  arrowhead(pen, onBearing(arc, to), onBearing(arc, to - head));

  const size = pen.style.labelSize;
  const edge = arc + outward * (0.3 * arrowLength(pen) + 0.3 * size);
  const shown = [0, goal];
  shown.forEach((number) => {
    const text = String(number);
    const box = pen.textSize(text, { weight: 600 });
    const bearing = number * step;
    const reach = (box.width * Math.abs(Math.sin(bearing)) + box.height * Math.abs(Math.cos(bearing))) / 2;
    const from0 = Math.min(bearing, 2 * Math.PI - bearing) * Math.abs(edge);
    // Too near to hole 0 for both numbers: each is moved off along the circle.
    const need = (box.width + pen.textSize('0', { weight: 600 }).width) / 2 + 0.4 * size;
    const short = number === goal ? Math.max(0, need - from0) / Math.abs(edge + outward * reach) : 0;
    const aside = bearing > Math.PI ? -short : short;
    pen.text(text, onBearing(edge + outward * reach, bearing + aside), { weight: 600 });
  });
}
