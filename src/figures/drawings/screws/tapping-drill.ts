import { z } from 'zod';
import { baseNames, shapeOfBase } from '../../../calculations/screws/forms.js';
import { InputError } from '../../../diagnostics/errors.js';
import { flattened } from '../../../geometry/curves/path.js';
import { reach } from '../../../geometry/screws/measure.js';
import { engagementOf } from '../../../geometry/screws/tapping.js';
import { arrow } from '../../drafting/arrow.js';
import { breakLine } from '../../drafting/break-line.js';
import { heightDimension } from '../../drafting/dimension.js';
import { hatch } from '../../drafting/hatch.js';
import { legend } from '../../drafting/legend.js';
import { type Point, point } from '../../drafting/point.js';
import { ENLARGEMENTS, firstThatFits, scaleName } from '../../drafting/scale.js';
import { defineFigure } from '../../figure.js';
import { length, word } from '../../given.js';
import { Pen } from '../../pen.js';
import { fine, isThread, nameOf, notThread, threadGiven } from './given.js';
import { threadRow } from './thread-row.js';

/** A pitch is drawn no wider than this, mm. */
const WIDEST = 40;

/** The wall of a tapped hole in section: what the drill left to the tap of a full thread. */
export const tappingDrillFigure = defineFigure({
  name: 'tapping-drill',
  title: 'The hole and the thread',
  given: z
    .strictObject({ ...threadGiven, base: word(...baseNames), hole: length(0.1, 150) })
    .refine(isThread, notThread)
    .refine((g) => g.base !== 'us' || g.series === 'iso', {
      path: ['base'],
      message: 'external or internal; the US base is for threads of 60°',
    }),
  draw(given, style) {
    const { series, majorDiameter, pitch, hole, base } = given;
    const shape = shapeOfBase(series, pitch, base);
    const row = threadRow(shape, 2);
    const { highest, lowest } = reach(row);
    const share = engagementOf(majorDiameter, highest - lowest, hole);
    if (share < 20 || share > 110)
      throw new InputError('hole', hole, 'a hole that leaves 20 to 110 % of the full thread');
    const mm = (value: number): string => fine(value, style);
    const percent = `${share.toFixed(0)} %`;
    const label =
      `Wall of a tapped hole, ${nameOf(given)}, in section: a hole of ${mm(hole)} leaves ${percent} of the full thread, ` +
      `base ${base}, which takes ${mm(2 * (highest - lowest))} off the diameter.`;
    const scales = ENLARGEMENTS.filter((scale) => scale === 1 || pitch * scale <= WIDEST);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      if ((highest - lowest) * scale < 1.3 * pen.textSize('0').height) return undefined;
      const foot = drawWall(pen, row, (majorDiameter - hole) / 2, { pitch, scale, percent });
      legend(pen, point(pen.extent.left, foot + style.labelSize), [
        { letter: 'd', meaning: 'major diameter', value: mm(majorDiameter) },
        { letter: 'd_h', meaning: 'hole', value: mm(hole) },
        {
          letter: '100 %',
          meaning: `full thread, base ${base}, on the diameter`,
          value: mm(2 * (highest - lowest)),
        },
        { letter: percent, meaning: 'left to the tap, on the diameter', value: mm(majorDiameter - hole) },
      ]);
      return pen.finish(label, scaleName(scale));
    });
  },
});

/**
 * The screw’s outline is the nut’s seen from the other side. Its crests are level 0 on the paper; the hole lies below.
 * Gives back the lowest level.
 *
 * @param left height of thread that the drill left, mm
 */
function drawWall(
  pen: Pen,
  row: ReturnType<typeof threadRow>,
  left: number,
  { pitch, scale, percent }: { pitch: number; scale: number; percent: string },
): number {
  const size = pen.style.labelSize;
  const { highest, lowest } = reach(row);
  const full = (highest - lowest) * scale;
  const kept = left * scale;
  const width = 2 * pitch * scale;
  const outline = flattened(row, 0.01 / scale).map(({ x, y }) => point(x * scale, (highest - y) * scale));
  const edge = cutAt(outline, kept);
  const body = -Math.max(6, 1.5 * size);

  hatch(pen, [[point(0, 0), point(width, 0), point(width, body), point(0, body)]], { spacing: 2.6 });
  hatch(pen, [[point(0, 0), ...edge, point(width, 0)]], { spacing: 1.3, angle: -45 });
  for (const tip of below(outline, kept)) pen.line('hidden', ...tip);
  pen.line('outline', ...edge);
  for (const x of [0, width]) breakLine(pen, point(x, body), point(x, Math.min(kept, full)));
  breakLine(pen, point(0, body), point(width, body));

  // What is left is told on one side and the whole on the other, so that neither’s lines pass by the other’s words.
  const beside = 3 + Math.max(3, size);
  pen.line('dimension', point(0, 0), point(width, 0));
  pen.line('fine', point(0, kept), point(width, kept));
  heightDimension(pen, {
    from: point(width, 0),
    to: point(width, kept),
    x: width + beside,
    label: percent,
    side: 'right',
  });
  heightDimension(pen, {
    from: point(0, 0),
    to: point(width / 2, full),
    x: -beside,
    label: '100 %',
    side: 'left',
  });
  const level = Math.max(full, kept) + Math.max(5, 1.5 * size);
  for (const [letter, tip] of [
    ['d', point(width / 4, 0)],
    ['d_h', point((3 * width) / 4, kept)],
  ] as const) {
    arrow(pen, point(tip.x, level - 0.3 * size), tip);
    pen.text(letter, point(tip.x, level), { sit: 'below' });
  }
  return level + size;
}

/** An outline cut off level: what lies lower than so much is drawn there; y down. */
const cutAt = (outline: readonly Point[], level: number): Point[] =>
  crossed(outline, level).map(({ x, y }) => point(x, Math.min(y, level)));

/** The parts of an outline that lie lower than a level. */
function below(outline: readonly Point[], level: number): Point[][] {
  const parts: Point[][] = [];
  let open = false;
  for (const p of crossed(outline, level)) {
    const low = p.y >= level - 1e-9;
    if (low && open) parts.at(-1)?.push(p);
    else if (low) parts.push([p]);
    open = low;
  }
  return parts.filter((part) => part.some(({ y }) => y > level + 0.1));
}

/** An outline with a place put in wherever it crosses a level. */
function crossed(outline: readonly Point[], level: number): Point[] {
  return outline.flatMap((p, i) => {
    const before = outline[i - 1] ?? p;
    if ((before.y - level) * (p.y - level) >= 0) return [p];
    const share = (level - before.y) / (p.y - before.y);
    return [point(before.x + share * (p.x - before.x), level), p];
  });
}
