import { z } from 'zod';
import { arrowhead, arrowLength } from '../drafting/arrow.js';
import { onBearing, point } from '../drafting/point.js';
import { fitting } from '../drafting/scale.js';
import { defineFigure } from '../figure.js';
import { count } from '../given.js';
import { Pen } from '../pen.js';

const FRACTIONS = ['', '¼', '½', '¾'] as const;

/** Teeth cut when a share of the wheel has gone by, as the card says it: `15`, `22½`. */
export function quarterCount(teeth: number, quarter: number): string {
  const fraction = FRACTIONS[(teeth * quarter) % 4] ?? '';
  const whole = Math.floor((teeth * quarter) / 4);
  return whole === 0 && fraction !== '' ? fraction : `${whole}${fraction}`;
}

/** The face of the wheel with its quarters marked, and how many teeth are cut at each. */
export const quarterMarks = defineFigure({
  name: 'quarter-marks',
  title: 'Quarter marks on the wheel',
  given: z.strictObject({ teeth: count(3, 400) }),
  draw({ teeth }, style) {
    const pen = new Pen(style);
    const size = style.labelSize;
    const centre = point(0, 0);
    const counts = [1, 2, 3, 4].map((quarter) => quarterCount(teeth, quarter));
    // The figures inside need five sizes; the marks on the rim at least 0.9 mm each.
    const radius = Math.max(4.2 * size, (teeth * 0.9) / 2 / Math.PI);
    const short = Math.min(2, radius * 0.12);
    pen.circle('outline', centre, radius);
    for (let tooth = 0; tooth < teeth; tooth++) {
      const bearing = (2 * Math.PI * tooth) / teeth;
      pen.line('fine', onBearing(radius, bearing), onBearing(radius - short, bearing));
    }
    const mark = Math.max(2.5, 0.8 * size);
    for (const [i, text] of ['', ...counts].entries()) {
      if (i === 0) continue;
      const bearing = (Math.PI / 2) * i;
      pen.line('outline', onBearing(radius - 2 * short, bearing), onBearing(radius + mark, bearing));
      const out = onBearing(radius + mark + 0.35 * size, bearing);
      const beside = {
        1: { anchor: 'start' },
        2: { sit: 'below' },
        3: { anchor: 'end' },
        4: { sit: 'above' },
      } as const;
      pen.text(text, out, { weight: 600, size: 1.3, ...beside[i as 1 | 2 | 3 | 4] });
    }
    pen.text(['teeth', 'cut'], centre);
    const turn = radius - 2 * short - Math.max(1.2, 0.4 * size);
    pen.stroke('fine', (trace) => trace.arc(centre, turn, 0.3, 1.2));
    arrowhead(pen, onBearing(turn, 1.2), onBearing(turn, 1.2 - arrowLength(pen) / turn));
    const label = `Wheel of ${teeth} teeth: ${counts[0]}, ${counts[1]}, ${counts[2]} and ${counts[3]} teeth cut at the quarter marks.`;
    return fitting(style, pen.finish(label, 'not to scale'));
  },
});
