import { z } from 'zod';
import { firstThatFits, scaleName } from '../../drafting/scale.js';
import { defineFigure } from '../../figure.js';
import { Pen } from '../../pen.js';
import { cutterShape, drawForm, formInWords, formOf } from './form-view.js';

const SCALES = [100, 50, 20, 10, 5, 2, 1] as const;

/** Taller than this and a figure crowds the words off a page, mm. */
const TALLEST = 75;

/** The cutting edge of a single-point cutter, tip down, with what a maker measures. */
export const cutterForm = defineFigure({
  name: 'cutter-form',
  title: 'The form of a single-point cutter',
  given: z.strictObject(cutterShape),
  draw(given, style) {
    const form = formOf(given);
    const scales = SCALES.filter((scale) => scale === 1 || form.depth * scale <= TALLEST);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      drawForm(pen, form, scale);
      return pen.finish(formInWords(given, form, style.units), scaleName(scale));
    });
  },
});
