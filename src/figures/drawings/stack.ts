import { z } from 'zod';
import { counted } from '../../units/words.js';
import { arrow, arrowhead } from '../drafting/arrow.js';
import { breakLine } from '../drafting/break-line.js';
import { chainDimension, lane, OVERRUN } from '../drafting/dimension.js';
import { hatch } from '../drafting/hatch.js';
import { notesAt } from '../drafting/leader.js';
import { legend } from '../drafting/legend.js';
import { type Point, point } from '../drafting/point.js';
import { firstThatFits, scaleName } from '../drafting/scale.js';
import { length as inWords } from '../drafting/wording.js';
import { defineFigure } from '../figure.js';
import { count, length } from '../given.js';
import { Pen } from '../pen.js';

/** Half heights, mm on paper; only lengths along the slide are to scale. */
const HEIGHT = { arbor: 3, washer: 7, backing: 11, blank: 14 } as const;
const WASHER = 2.5;

/** Blanks on their arbor, and under them the travel they need against the travel the slide has. */
export const stack = defineFigure({
  name: 'stack',
  title: 'A stack of blanks on the slide',
  given: z.strictObject({
    blankThickness: length(0.1, 50),
    blanks: count(1, 60),
    backing: length(0, 100).default(0),
    approach: length(0, 200),
    clearance: length(0, 50).default(1),
    slideTravel: length(1, 1500),
  }),
  draw(given, style) {
    const mm = (value: number): string => inWords(value, style);
    const work = given.blanks * given.blankThickness + given.backing;
    const needed = work + 2 * (given.approach + given.clearance);
    const spare = given.slideTravel - needed;
    const verdict = spare >= 0 ? `${mm(spare)} to spare` : `${mm(-spare)} short`;
    const blanks = `${counted(given.blanks, 'blank')} of ${mm(given.blankThickness)}`;
    const label =
      `A stack of ${blanks}${given.backing > 0 ? ` and ${mm(given.backing)} of backing` : ''}: ` +
      `needs a travel of ${mm(needed)}; the slide has ${mm(given.slideTravel)}, ${verdict}.`;
    return firstThatFits([1, 0.5, 0.2, 0.1], style, (scale) => {
      const pen = new Pen(style);
      const size = style.labelSize;
      const b = work * scale;
      const g = given.approach * scale;
      const c = given.clearance * scale;
      drawStack(pen, given.blanks, given.blankThickness * scale, b);

      pen.text(blanks, point((given.blanks * given.blankThickness * scale) / 2, -HEIGHT.blank - 0.6 * size), {
        sit: 'above',
      });
      if (given.backing > 0) {
        const tip = point(b, -HEIGHT.backing + 0.8);
        notesAt(pen, b + WASHER + Math.max(5, 2 * size), [{ text: `backing ${mm(given.backing)}`, tip }]);
      }

      const first = HEIGHT.blank + Math.max(5, 1.2 * size);
      const at = (x: number): Point => point(x, HEIGHT.blank);
      chainDimension(pen, first, [
        { at: at(-g - c), letter: 'c' },
        { at: at(-g), letter: 'g' },
        { at: at(0), letter: 'b' },
        { at: at(b), letter: 'g' },
        { at: at(b + g), letter: 'c' },
        { at: at(b + g + c) },
      ]);
      const start = first + 1.8 * size + OVERRUN;
      const travels = [
        { travel: needed, text: `needed ${mm(needed)}` },
        { travel: given.slideTravel, text: `slide travel ${mm(given.slideTravel)}: ${verdict}` },
      ];
      const rows = travels.map((_, i) => start + (i + 0.8) * (lane(pen) + 1));
      pen.line('dimension', point(-g - c, start), point(-g - c, (rows.at(-1) ?? 0) + OVERRUN));
      for (const [i, { travel, text }] of travels.entries()) {
        const from = point(-g - c, rows[i] ?? 0);
        const to = point(from.x + travel * scale, from.y);
        arrow(pen, from, to);
        arrowhead(pen, from, to);
        pen.line('dimension', point(to.x, to.y - OVERRUN), point(to.x, to.y + OVERRUN));
        pen.text(text, point(from.x + 0.5 * size, from.y - OVERRUN - 0.25 * size), {
          anchor: 'start',
          sit: 'above',
        });
      }
      legend(pen, point(pen.extent.left, pen.extent.bottom + 1.2 * size), [
        { letter: 'b', meaning: 'blanks and backing', value: mm(work) },
        { letter: 'g', meaning: 'approach', value: mm(given.approach) },
        ...(c > 0 ? [{ letter: 'c', meaning: 'clearance', value: mm(given.clearance) }] : []),
      ]);
      return pen.finish(label, `${scaleName(scale)} along the slide`);
    });
  },
});

/** The stack in section on its arbor: near face at x 0, axis at y 0. */
function drawStack(pen: Pen, blanks: number, thickness: number, end: number): void {
  const past = WASHER + 5;
  const block = (left: number, right: number, height: number, angle: number): void => {
    for (const side of [-1, 1]) {
      const [inner, outer] = [side * HEIGHT.arbor, side * height];
      const corners = [point(left, inner), point(left, outer), point(right, outer), point(right, inner)];
      hatch(pen, [corners], { angle, spacing: 1.6 });
      pen.polygon('outline', corners);
    }
  };
  block(-WASHER, 0, HEIGHT.washer, -45);
  for (let i = 0; i < blanks; i++)
    block(i * thickness, (i + 1) * thickness, HEIGHT.blank, i % 2 === 0 ? 45 : -45);
  if (end > blanks * thickness) block(blanks * thickness, end, HEIGHT.backing, blanks % 2 === 0 ? 45 : -45);
  block(end, end + WASHER, HEIGHT.washer, -45);
  for (const edge of [-HEIGHT.arbor, HEIGHT.arbor])
    pen.line('outline', point(-past, edge), point(end + past, edge));
  for (const x of [-past, end + past]) breakLine(pen, point(x, -HEIGHT.arbor), point(x, HEIGHT.arbor));
  pen.line('centre', point(-past - 2, 0), point(end + past + 2, 0));
}
