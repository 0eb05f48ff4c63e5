import { z } from 'zod';
import { MM_PER_INCH } from '../../../units/length.js';
import { isClear } from '../../drafting/clear.js';
import { type Point, point } from '../../drafting/point.js';
import { fitting, scaleName } from '../../drafting/scale.js';
import { plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { count } from '../../given.js';
import { Pen } from '../../pen.js';
import { cutterShape, drawEdge, drawForm, formInWords, formOf } from '../cutting/form-view.js';

/** Rules beside the form are divided in these, mm of the cutter; one in so many is numbered. */
const RULES = {
  mm: { part: 0.1, each: 5, unit: 1, name: 'mm' },
  inch: { part: 0.005 * MM_PER_INCH, each: 5, unit: MM_PER_INCH, name: 'in' },
} as const;
/** Length of a graduation, mm on paper. */
const REACH = { short: 1.6, long: 2.8 };

/** The form of a cutter at one fixed scale, for a projector or to lay beside what a loupe shows. */
export const cutterProjection = defineFigure({
  name: 'cutter-projection',
  title: 'A cutter’s form, many times its size',
  given: z.strictObject({ ...cutterShape, scale: count(2, 100).default(20) }),
  draw({ scale, ...given }, style) {
    const form = formOf(given);
    let pen = new Pen(style);
    drawForm(pen, form, scale);
    if (!isClear(pen)) {
      // So small that its sizes would crowd one another.
      pen = new Pen(style);
      drawEdge(pen, form, scale);
    }
    const { left } = pen.extent;
    rule(pen, { at: point(left - 3.5, 0), length: form.depth, scale, way: 'up' });
    const wide = 2 * form.halfPitch;
    const below = pen.extent.bottom + 0.8 * style.labelSize;
    rule(pen, { at: point((-wide / 2) * scale, below), length: wide, scale, way: 'across' });
    const label = `${scaleName(scale)}, with rules of the cutter’s own size beside it. ${formInWords(given, form, style.units)}`;
    return fitting(style, pen.finish(label, scaleName(scale)));
  },
});

/** A rule of the cutter's own lengths from a place on, as long as a part or a little longer. */
function rule(pen: Pen, how: { at: Point; length: number; scale: number; way: 'across' | 'up' }): void {
  const { at, length, scale, way } = how;
  const size = pen.style.labelSize;
  const { part, each, unit, name } = RULES[pen.style.units];
  const groups = Math.max(1, Math.ceil(length / (each * part) - 1e-9));
  const place = (along: number, aside: number): Point =>
    way === 'across' ? point(at.x + along * scale, at.y + aside) : point(at.x - aside, at.y - along * scale);
  const end = groups * each * part;
  pen.line('fine', place(0, 0), place(end, 0));
  const words = (count: number): string =>
    `${plain((count * part) / unit)}${count === groups * each ? `\u2009${name}` : ''}`;
  // Where figures would crowd one another only the ends are numbered.
  const wide = pen.textSize(plain(((groups - 1) * each * part) / unit)).width + 0.5 * size;
  const apart = each * part * scale;
  const roomy = way === 'across' ? apart > wide + 0.5 * size : apart > 1.3 * size;
  const fine = part * scale >= 0.7;
  for (let count = 0; count <= groups * each; count++) {
    const long = count % each === 0;
    if (!long && !fine) continue;
    const from = place(count * part, 0);
    pen.line(long ? 'fine' : 'dimension', from, place(count * part, long ? REACH.long : REACH.short));
    if (!long || !(roomy || count === 0 || count === groups * each)) continue;
    const beyond = place(count * part, REACH.long + 0.35 * size);
    if (way === 'up') pen.text(words(count), beyond, { anchor: 'end' });
    else {
      const lead =
        count === groups * each && roomy ? pen.textSize(plain((count * part) / unit)).width / 2 : 0;
      pen.text(words(count), point(beyond.x - lead, beyond.y), {
        anchor: count === 0 || (roomy && count < groups * each) ? 'middle' : 'start',
        sit: 'below',
      });
    }
  }
}
