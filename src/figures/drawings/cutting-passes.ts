import { z } from 'zod';
import { arrowhead, arrowLength } from '../drafting/arrow.js';
import { OVERRUN, STAND_OFF } from '../drafting/dimension.js';
import { hatch } from '../drafting/hatch.js';
import { point } from '../drafting/point.js';
import { ENLARGEMENTS, firstThatFits, scaleName } from '../drafting/scale.js';
import { spread } from '../drafting/spread.js';
import { length as inWords } from '../drafting/wording.js';
import { defineFigure, type FigureStyle } from '../figure.js';
import { length, numbers } from '../given.js';
import { Pen } from '../pen.js';

/** Tallest slot, mm, and how far its passes may miss its depth: half the last figure that is printed. */
const TALLEST = 70;
const ROUNDING = 0.005;

/** A space cut down in passes: what each takes on one side, the depth reached on the other. */
export const cuttingPasses = defineFigure({
  name: 'cutting-passes',
  title: 'Cutting to depth in passes',
  given: z
    .strictObject({
      depth: length(0.05, 50),
      passes: numbers(z.number().min(0.01).max(50), 12, 'depths in mm, each 0.01 or more'),
    })
    .refine((g) => Math.abs(total(g.passes) - g.depth) <= ROUNDING * (g.passes.length + 1), {
      path: ['passes'],
      message: 'depths that add up to the full depth',
    }),
  draw({ depth, passes }, style) {
    const scales = ENLARGEMENTS.filter((scale) => scale === 1 || depth * scale <= TALLEST);
    const each = passes.map((pass) => inWords(pass, style)).join(', ');
    const label = `A space cut ${inWords(depth, style)} deep in passes of ${each}, with the depth reached after each.`;
    return firstThatFits(scales, style, (scale) => {
      const pen = drawPasses(passes, scale, style);
      return pen.finish(label, scale === 1 ? 'depth at true scale' : `depth ${scaleName(scale)}`);
    });
  },
});

const total = (passes: readonly number[]): number => passes.reduce((sum, pass) => sum + pass, 0);

function drawPasses(passes: readonly number[], scale: number, style: FigureStyle): Pen {
  const pen = new Pen(style);
  const size = style.labelSize;
  const totals = passes.map((_, i) => total(passes.slice(0, i + 1)));
  const levels = [0, ...totals].map((sum) => sum * scale);
  const deepest = levels.at(-1) ?? 0;
  const slot = 8;
  const wall = 16;
  const floor = deepest + 7;

  const metal = [
    point(-wall, 0),
    point(-slot, 0),
    point(-slot, deepest),
    point(slot, deepest),
    point(slot, 0),
    point(wall, 0),
    point(wall, floor),
    point(-wall, floor),
  ];
  hatch(pen, [metal], { spacing: 2 });
  pen.line('outline', ...metal.slice(0, 6));
  for (const level of levels.slice(1, -1)) pen.line('hidden', point(-slot, level), point(slot, level));

  const row = pen.textSize('0').height + 0.3 * size;
  const pass = passColumn(pen, passes, levels, row, -wall);
  const dial = dialColumn(pen, [0, ...totals], levels, row, wall);
  const head = Math.min(pass.top, dial.top) - 0.6 * size;
  pen.text('pass', point(pass.right, head), { anchor: 'end', sit: 'above' });
  pen.text('depth reached', point(dial.right, head), { anchor: 'end', sit: 'above' });
  return pen;
}

/** Where a column's heading goes. */
interface Column {
  readonly top: number;
  readonly right: number;
}

/** To the left: each pass between its two levels. */
function passColumn(
  pen: Pen,
  passes: readonly number[],
  levels: readonly number[],
  row: number,
  edge: number,
): Column {
  const size = pen.style.labelSize;
  const x = edge - Math.max(5, 1.2 * size);
  for (const level of levels)
    pen.line('dimension', point(edge - STAND_OFF, level), point(x - OVERRUN, level));
  const middles = passes.map((_, i) => ((levels[i] ?? 0) + (levels[i + 1] ?? 0)) / 2);
  const heights = spread(
    middles,
    passes.map(() => row),
  );
  const end = x - OVERRUN - 1.4 * size;
  for (const i of passes.keys()) {
    const [top = 0, bottom = 0] = levels.slice(i, i + 2);
    pen.line('dimension', point(x, top), point(x, bottom));
    if (bottom - top >= 2.4 * arrowLength(pen)) {
      arrowhead(pen, point(x, top), point(x, bottom));
      arrowhead(pen, point(x, bottom), point(x, top));
    } else {
      pen.circle('dimension', point(x, top), 0.45, 'ink');
      pen.circle('dimension', point(x, bottom), 0.45, 'ink');
    }
    const y = heights[i] ?? 0;
    pen.line('dimension', point(x, middles[i] ?? 0), point(x - OVERRUN, middles[i] ?? 0), point(end, y));
    pen.text(`${i + 1}`, point(end - 0.35 * size, y), { anchor: 'end', weight: 600 });
  }
  const numbersWidth = Math.max(...passes.map((_, i) => pen.textSize(`${i + 1}`, { weight: 600 }).width));
  const values = end - 0.35 * size - numbersWidth - 0.8 * size;
  for (const [i, pass] of passes.entries()) {
    pen.text(inWords(pass, pen.style), point(values, heights[i] ?? 0), { anchor: 'end' });
  }
  return { top: Math.min(0, (heights[0] ?? 0) - row / 2), right: end - 0.35 * size };
}

/** To the right: the depth that is reached at each level. */
function dialColumn(
  pen: Pen,
  totals: readonly number[],
  levels: readonly number[],
  row: number,
  edge: number,
): Column {
  const size = pen.style.labelSize;
  const heights = spread(
    levels,
    levels.map(() => row),
  );
  const bend = edge + 2.5;
  const end = bend + 1.4 * size;
  const widest = Math.max(...totals.map((sum) => pen.textSize(inWords(sum, pen.style)).width));
  const right = end + 0.35 * size + widest;
  for (const [i, sum] of totals.entries()) {
    const [level = 0, y = 0] = [levels[i], heights[i]];
    pen.line('dimension', point(edge + STAND_OFF, level), point(bend, level), point(end, y));
    pen.text(inWords(sum, pen.style), point(right, y), { anchor: 'end' });
  }
  return { top: (heights[0] ?? 0) - row / 2, right };
}
