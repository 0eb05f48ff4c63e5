import { z } from 'zod';
import { flattened, type Path, turnedPath } from '../../../geometry/curves/path.js';
import { removed, windowsOf } from '../../../geometry/finishing/crossing.js';
import { formatNumber } from '../../../units/format.js';
import { hatch } from '../../drafting/hatch.js';
import { traceOutline } from '../../drafting/outline.js';
import { onBearing, point } from '../../drafting/point.js';
import { firstThatFits, REDUCTIONS, scaleName } from '../../drafting/scale.js';
import { length as inWords } from '../../drafting/wording.js';
import { wrapped } from '../../drafting/wrap.js';
import { defineFigure } from '../../figure.js';
import { length } from '../../given.js';
import { Pen } from '../../pen.js';
import { crossingOf, crossingShape, isOpen, OPEN } from './given.js';

const CENTRE = point(0, 0);

/** A whole wheel crossed out, at true scale where the page has room: the waste is hatched, the first arm stands up. */
export const crossingLayout = defineFigure({
  name: 'crossing-layout',
  title: 'The wheel crossed out',
  given: z
    .strictObject({ ...crossingShape, outsideDiameter: length(4, 500), hole: length(0.1, 300).optional() })
    .refine(isOpen, OPEN)
    .refine((g) => g.outsideDiameter > g.rimInsideDiameter, {
      path: ['outsideDiameter'],
      message: 'more than the inside diameter of the rim',
    })
    .refine((g) => (g.hole ?? 0) < g.hubDiameter, { path: ['hole'], message: 'less than the hub' }),
  draw(given, style) {
    const { arms, outsideDiameter, rimInsideDiameter, hubDiameter, hole } = given;
    const result = windowsOf(crossingOf(given));
    const windows = 'windows' in result ? result.windows : [];
    const share = (100 * removed(windows).area) / ((Math.PI / 4) * outsideDiameter ** 2);
    const mm = (value: number): string => inWords(value, style);
    const percent = `${formatNumber(share, 0)}%`;
    const label =
      `Wheel of ${mm(outsideDiameter)} crossed out to ${arms} arms between a rim of ${mm(rimInsideDiameter)} inside ` +
      `and a hub of ${mm(hubDiameter)}; the windows take ${percent} of the disc.`;
    return firstThatFits(REDUCTIONS, style, (scale) => {
      const pen = new Pen(style);
      drawWheel(pen, windows, arms, scale, { ...given, hole });
      const lines = [
        `${arms} arms, rim ${mm(rimInsideDiameter)} inside, hub ${mm(hubDiameter)}`,
        `hatched: waste, ${percent} of a disc of ${mm(outsideDiameter)}`,
      ];
      const words = lines.flatMap((line) => wrapped(pen, line, style.maxWidth - 2));
      pen.text(words, point(0, pen.extent.bottom + style.labelSize), { sit: 'below' });
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** The first arm stands at the top; every arm has its middle line, by which it is set out. */
function drawWheel(
  pen: Pen,
  windows: readonly Path[],
  arms: number,
  scale: number,
  {
    outsideDiameter,
    rimInsideDiameter,
    hole,
  }: { outsideDiameter: number; rimInsideDiameter: number; hole?: number | undefined },
): void {
  const upright = windows.map((window) => turnedPath(window, Math.PI / 2));
  for (const window of upright) {
    const corners = flattened(window, 0.01 / scale).map(({ x, y }) => point(x * scale, -y * scale));
    hatch(pen, [corners], { spacing: 2.4 });
    pen.stroke('outline', (trace) => traceOutline(trace, window, CENTRE, scale).close());
  }
  const outer = (outsideDiameter / 2) * scale;
  pen.circle('outline', CENTRE, outer);
  if (hole !== undefined) pen.circle('outline', CENTRE, (hole / 2) * scale);
  const past = outer + 2.5;
  pen.line('centre', point(-past, 0), point(past, 0));
  pen.line('centre', point(0, -past), point(0, past));
  const rim = (rimInsideDiameter / 2) * scale;
  for (let arm = 1; arm < arms; arm++) {
    const bearing = (2 * Math.PI * arm) / arms;
    // Those on the cross have their line already.
    if (Math.abs(Math.sin(2 * bearing)) > 1e-9) pen.line('centre', CENTRE, onBearing(rim + 1, bearing));
  }
}
