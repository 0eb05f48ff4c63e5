import { z } from 'zod';
import { riseOverBands } from '../../../geometry/finishing/disc.js';
import { formatNumber } from '../../../units/format.js';
import { MM_PER_INCH } from '../../../units/length.js';
import { heightDimension } from '../../drafting/dimension.js';
import { legend } from '../../drafting/legend.js';
import { point } from '../../drafting/point.js';
import { fitting } from '../../drafting/scale.js';
import { defineFigure } from '../../figure.js';
import { Pen } from '../../pen.js';

/** Radius of a face as drawn, mm. */
const FACE = 22;

/** Fewest bands across a face. */
const FEWEST = 7;

/** The same face under an optical flat when it is flat, and when it is hollow or high by so many bands. */
export const flatnessBands = defineFigure({
  name: 'flatness-bands',
  title: 'Bands under an optical flat',
  given: z.strictObject({
    bands: z.number().min(0.25).max(4).describe('bands by which one curves, 0.25 to 4'),
    wavelength: z
      .number()
      .min(0.0002)
      .max(0.002)
      .default(0.000589)
      .describe('a wavelength in mm, 0.0002 to 0.002'),
  }),
  draw({ bands, wavelength }, style) {
    const pen = new Pen(style);
    const size = style.labelSize;
    const rise = riseOverBands(bands, wavelength);
    const [small, value] =
      style.units === 'mm'
        ? ['thousandths of a millimetre', formatNumber(1000 * rise, 2)]
        : ['millionths of an inch', formatNumber((1e6 * rise) / MM_PER_INCH, 1)];
    // So many that none closes to a ring: the wedge of air is steeper than the face.
    const count = Math.max(FEWEST, 2 * Math.ceil(2 * bands) + 3);
    const spacing = (2 * FACE) / count;
    const beside = 2 * FACE + Math.max(10, pen.textSize('flat').width / 2, 2.4 * size);
    drawFace(pen, 0, 0, count);
    drawFace(pen, beside, bands, count);
    pen.text('flat', point(0, FACE + 0.8 * size), { sit: 'below' });
    pen.text('not flat', point(beside, FACE + 0.8 * size), { sit: 'below' });
    // By how much the middle band bows from the line between its ends.
    const ends = bands * spacing;
    const right = beside + FACE + 3;
    pen.line('hidden', point(beside - FACE, ends), point(right, ends));
    pen.line('hidden', point(beside, 0), point(right, 0));
    heightDimension(pen, {
      from: point(right - 1, 0),
      to: point(right - 1, ends),
      x: right + Math.max(4, size),
      label: 'k',
      side: 'right',
    });
    heightDimension(pen, {
      from: point(-FACE, 0),
      to: point(-FACE, -spacing),
      x: -FACE - Math.max(4, size),
      label: 'p',
      side: 'left',
    });
    legend(pen, point(pen.extent.left, pen.extent.bottom + size), [
      { letter: 'p', meaning: 'from band to band, half a wavelength', value: '' },
      { letter: 'k', meaning: 'bow of a band', value: `${formatNumber(bands, 2)} p` },
      { letter: 'u', meaning: `out of flat, ${small}`, value },
    ]);
    const label =
      `Bands under an optical flat: straight and even on a flat face; bowed by ${formatNumber(bands, 2)} bands on one ` +
      `that is out of flat by ${value} ${small}.`;
    return fitting(style, pen.finish(label, 'not to scale'));
  },
});

/**
 * A round face with its bands: where the gap under the flat, a wedge and the face's own hollow, is whole half-waves.
 * Over such a face they are arcs; each meets the edge at the level where the wedge makes up for the hollow there.
 */
function drawFace(pen: Pen, x: number, bow: number, count: number): void {
  const wedge = count / (2 * FACE);
  const hollow = bow / FACE ** 2;
  pen.circle('outline', point(x, 0), FACE);
  const least = Math.ceil(bow - count / 2 + 0.05);
  for (let band = least; band < bow + count / 2 - 0.05; band++) {
    const level = (bow - band) / wedge;
    const half = Math.sqrt(FACE ** 2 - level ** 2);
    const [left, right] = [point(x - half, level), point(x + half, level)];
    pen.stroke('outline', (trace) => {
      trace.moveTo(left);
      if (bow === 0) trace.lineTo(right);
      else trace.bend(right, Math.sqrt(band / hollow + (wedge / hollow / 2) ** 2), 'clockwise');
    });
  }
}
