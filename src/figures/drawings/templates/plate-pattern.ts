import { z } from 'zod';
import { counted } from '../../../units/words.js';
import { type Note, notesAt } from '../../drafting/leader.js';
import { onBearing, point } from '../../drafting/point.js';
import { fitting } from '../../drafting/scale.js';
import { length as inWords } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { length, numbers, word } from '../../given.js';
import { Pen } from '../../pen.js';
import { centreMark, pointer } from './marks.js';

const CENTRE = point(0, 0);
/** Half the cross that a punch is set to, as a share of the hole; at most so many mm. */
const CROSS = { share: 0.32, most: 1.2 };

/** Where the holes of a division plate go, true to scale: a cross for the punch, a ring to see that the drill kept to it. */
export const platePattern = defineFigure({
  name: 'plate-pattern',
  title: 'A division plate to drill',
  given: z
    .strictObject({
      circles: numbers(z.number().int().min(2).max(400), 60, 'counts of holes, each 2 to 400'),
      diameters: numbers(z.number().min(2).max(2000), 60, 'diameters of the circles in mm, each 2 to 2000'),
      holeDiameter: length(0.2, 20),
      plateDiameter: length(4, 2500),
      bore: length(0.5, 500).optional(),
      sizes: word('yes', 'no').default('yes'),
    })
    .refine((g) => g.circles.length === g.diameters.length, {
      path: ['diameters'],
      message: 'a diameter for each circle',
    })
    .refine((g) => Math.max(...g.diameters) + g.holeDiameter < g.plateDiameter, {
      path: ['plateDiameter'],
      message: 'more than its largest circle and a hole',
    })
    .refine((g) => (g.bore ?? 0) + g.holeDiameter < Math.min(...g.diameters), {
      path: ['bore'],
      message: 'less than its smallest circle',
    }),
  draw({ circles, diameters, holeDiameter, plateDiameter, bore, sizes }, style) {
    const pen = new Pen(style);
    const outer = plateDiameter / 2;
    pen.circle('outline', CENTRE, outer);
    if (bore !== undefined) pen.circle('outline', CENTRE, bore / 2);
    const past = outer + 3;
    pen.line('centre', point(-past, 0), point(past, 0));
    pen.line('centre', point(0, -past), point(0, past));
    centreMark(pen, CENTRE, Math.min(4, outer / 8));
    pointer(pen, point(0, -past));
    for (const [at, holes] of circles.entries())
      drawCircle(pen, holes, (diameters[at] ?? 0) / 2, holeDiameter / 2);
    const order = circles.map((holes, at) => ({ holes, radius: (diameters[at] ?? 0) / 2 }));
    order.sort((a, b) => b.radius - a.radius);
    if (!countsWithin(pen, order, holeDiameter, bore ?? 0) && sizes === 'yes')
      notesAt(pen, past + Math.max(3, 1.4 * style.labelSize), notesFor(order, outer, style));
    const told = circles.map((holes, at) => `${holes} on ${inWords(diameters[at] ?? 0, style)}`).join(', ');
    const label = `A division plate of ${inWords(plateDiameter, style)} at true scale, every hole marked to be punched: ${told}.`;
    return fitting(style, pen.finish(label, 'true scale'));
  },
});

/** One circle; its first hole stands at the top. */
function drawCircle(pen: Pen, holes: number, radius: number, hole: number): void {
  const first = point(0, -radius);
  const arm = Math.min(CROSS.most, 2 * CROSS.share * hole);
  pen.circle('dimension', CENTRE, radius);
  pen.strokeRound('dimension', CENTRE, holes, (trace) => {
    trace.arc(first, hole, 0, Math.PI).arc(first, hole, Math.PI, 2 * Math.PI);
    trace.moveTo(point(0, -radius - arm)).lineTo(point(0, -radius + arm));
  });
}

interface HoleCircle {
  readonly holes: number;
  readonly radius: number;
}

/**
 * Writes each count just within its circle, beside the middle line, where all have room between the circles; the
 * outermost comes first.
 *
 * @returns whether they had
 */
function countsWithin(pen: Pen, order: readonly HoleCircle[], hole: number, bore: number): boolean {
  const size = pen.style.labelSize;
  const rooms = order.map(({ holes, radius }, at) => {
    const { width, height } = pen.textSize(String(holes));
    const next = order[at + 1];
    // The circle falls away over the width of the figures.
    const over = radius - hole / 2;
    const aside = 0.5 * size + width;
    const top = over > aside ? Math.sqrt(over ** 2 - aside ** 2) : 0;
    return { top, height, band: top - (next ? next.radius + hole / 2 : bore / 2 + size) };
  });
  if (rooms.some(({ band, height }) => band < height + 0.7)) return false;
  for (const [at, { holes }] of order.entries()) {
    const { top = 0, band = 0, height = 0 } = rooms[at] ?? {};
    const level = top - Math.min(band, 2 * height) / 2;
    pen.text(String(holes), point(0.5 * size, -level), { anchor: 'start' });
  }
  return true;
}

/** Each circle by its count, from the outermost down; a leader ends between two holes. */
function notesFor(
  order: readonly HoleCircle[],
  outer: number,
  style: { readonly units: 'mm' | 'inch' },
): Note[] {
  return order.map(({ holes, radius }, at) => {
    const level = outer * (-0.6 + (1.2 * (at + 0.5)) / order.length);
    const wanted = Math.acos(-Math.max(-0.85, Math.min(0.85, level / radius)));
    const step = (2 * Math.PI) / holes;
    const bearing = (Math.floor(wanted / step) + 0.5) * step;
    return {
      text: [counted(holes, 'hole'), `Ø ${inWords(2 * radius, style)}`],
      tip: onBearing(radius, bearing),
    };
  });
}
