import { z } from 'zod';
import { MM_PER_INCH } from '../../units/length.js';
import { point } from '../drafting/point.js';
import { fitting } from '../drafting/scale.js';
import { plain } from '../drafting/wording.js';
import { defineFigure } from '../figure.js';
import { length, word } from '../given.js';
import { Pen } from '../pen.js';

/** From one tick to the next, and the length of a bar where none is given, mm; how a length in it is printed. */
const SYSTEMS = {
  mm: { tick: 10, whole: 100, say: (mm: number) => `${plain(mm)}\u2009mm` },
  inch: {
    tick: MM_PER_INCH / 2,
    whole: 4 * MM_PER_INCH,
    say: (mm: number) => `${plain(mm / MM_PER_INCH)}\u2009in`,
  },
} as const;

/** Two bars to lay a rule on, across and down the page, each with a box for what it measures. */
export const checkBar = defineFigure({
  name: 'check-bar',
  title: 'Check the scale before you cut',
  given: z.strictObject({
    length: length(50, 400).optional(),
    units: word('mm', 'inch').optional(),
  }),
  draw(given, style) {
    const units = given.units ?? style.units;
    const { tick, whole, say } = SYSTEMS[units];
    const bar = given.length ?? whole;
    const pen = new Pen(style);
    const size = style.labelSize;
    const end = say(bar);
    const ticks = Array.from({ length: Math.floor(bar / tick + 1e-9) + 1 }, (_, i) => i * tick);
    const ends = [...ticks.filter((at) => bar - at > 1e-6), bar];
    const long = 4;
    const short = 2.2;

    pen.line('outline', point(0, 0), point(bar, 0));
    pen.line('outline', point(0, 0), point(0, bar));
    for (const at of ends) {
      const reach = at === 0 || at === bar ? long : short;
      pen.line(at === bar ? 'outline' : 'fine', point(at, 0), point(at, -reach));
      pen.line(at === bar ? 'outline' : 'fine', point(0, at), point(-reach, at));
    }
    const gap = 0.4 * size;
    pen.text('0', point(0, -long - gap), { sit: 'above' });
    pen.text(end, point(bar, -long - gap), { anchor: 'end', sit: 'above' });
    pen.text('0', point(-long - gap, 0), { anchor: 'end' });
    pen.text(end, point(-long - gap, bar), { anchor: 'start', turn: -90, sit: 'above' });

    const inset = 2 * size;
    const across = measuredBox(pen, inset, inset, 'across', units);
    const down = measuredBox(pen, inset, across + size, 'down', units);
    const advice = ['Print at 100 %, never fitted to the page.', `Cut only when both bars measure ${end}.`];
    pen.text(advice, point(inset, down + size), { anchor: 'start', sit: 'below' });
    const label =
      `Two bars, across and down the page, each ${end} long with a tick every ${say(tick)}, ` +
      'and a box to write the measured length of each.';
    return fitting(style, pen.finish(label, 'true scale'));
  },
});

/** A word, an empty box to write in, and the unit. Gives back its lower edge. */
function measuredBox(pen: Pen, left: number, top: number, direction: string, units: 'mm' | 'inch'): number {
  const size = pen.style.labelSize;
  const height = Math.max(8, 2 * size);
  const middle = top + height / 2;
  const words = Math.max(...['across', 'down'].map((word) => pen.textSize(`measured ${word}`).width));
  pen.text(`measured ${direction}`, point(left, middle), { anchor: 'start' });
  const box = {
    left: left + words + size,
    right: left + words + size + 4 * size + 8,
    top,
    bottom: top + height,
  };
  pen.rectangle('fine', box);
  pen.text(units === 'mm' ? 'mm' : 'in', point(box.right + 0.6 * size, middle), { anchor: 'start' });
  return box.bottom;
}
