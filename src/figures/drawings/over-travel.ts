import { z } from 'zod';
import { breakLine } from '../drafting/break-line.js';
import { chainDimension, heightDimension, widthDimension } from '../drafting/dimension.js';
import { hatch } from '../drafting/hatch.js';
import { legend } from '../drafting/legend.js';
import { point } from '../drafting/point.js';
import { firstThatFits, scaleName } from '../drafting/scale.js';
import { length as inWords } from '../drafting/wording.js';
import { defineFigure } from '../figure.js';
import { length } from '../given.js';
import { Pen } from '../pen.js';

/** The three places of the cutter, by name where there is room, else by number. */
const NAMES = [['entry'], ['full', 'depth'], ['exit']] as const;
const NUMBERS = [['1'], ['2'], ['3']] as const;

/** True scale before any other, enlarged only where the lettering would not fit. */
const WAYS = [
  { scale: 1, places: NAMES },
  { scale: 2, places: NAMES },
  ...[1, 2, 5].map((scale) => ({ scale, places: NUMBERS })),
  ...[0.5, 0.2, 0.1].flatMap((scale) => [NAMES, NUMBERS].map((places) => ({ scale, places }))),
];

/** The round cutter before, over and past the work, and the travel that takes. */
export const overTravel = defineFigure({
  name: 'over-travel',
  title: 'Over-travel of the cutter',
  given: z
    .strictObject({
      cutterDiameter: length(1, 300),
      depth: length(0.05, 50),
      thickness: length(0.1, 300),
      clearance: length(0, 50).default(1),
    })
    .refine((g) => g.depth < g.cutterDiameter / 2, {
      path: ['depth'],
      message: 'less than the radius of the cutter',
    }),
  draw({ cutterDiameter, depth, thickness, clearance }, style) {
    const approach = Math.sqrt(depth * (cutterDiameter - depth));
    const travel = thickness + 2 * (approach + clearance);
    const mm = (value: number): string => inWords(value, style);
    const label =
      `A cutter of ${mm(cutterDiameter)} diameter at entry, at full depth and at exit of work ${mm(thickness)} thick, ` +
      `${mm(depth)} deep: approach ${mm(approach)}, clearance ${mm(clearance)}, travel ${mm(travel)}.`;
    return firstThatFits(WAYS, style, ({ scale, places }) => {
      const pen = new Pen(style);
      const size = style.labelSize;
      if (travel * scale < pen.textSize(places[1] ?? '').width + size) return undefined;
      const lane = drawTravel(pen, places, `travel T = ${mm(travel)}`, {
        radius: (cutterDiameter / 2) * scale,
        h: depth * scale,
        b: thickness * scale,
        g: approach * scale,
        c: clearance * scale,
      });
      legend(pen, point(pen.extent.left, lane + 3 * size), [
        ...(places === NUMBERS ? NAMES : []).map((name, i) => ({
          letter: `${i + 1}`,
          meaning: name.join(' '),
          value: '',
        })),
        { letter: 'h', meaning: 'depth of cut', value: mm(depth) },
        { letter: 'b', meaning: 'thickness of the work', value: mm(thickness) },
        { letter: 'g', meaning: 'approach', value: mm(approach) },
        ...(clearance > 0 ? [{ letter: 'c', meaning: 'clearance', value: mm(clearance) }] : []),
        { letter: 'T', meaning: `travel, b + 2g${clearance > 0 ? ' + 2c' : ''}`, value: mm(travel) },
      ]);
      return pen.finish(label, scaleName(scale));
    });
  },
});

/**
 * All lengths as drawn. Along the slide the near face is 0; up the page the bottom of the spaces is 0, so the axis of
 * the cutter runs at -radius. Gives back the level of the lowest dimension line.
 */
function drawTravel(
  pen: Pen,
  names: readonly (readonly string[])[],
  travel: string,
  { radius, h, b, g, c }: { radius: number; h: number; b: number; g: number; c: number },
): number {
  const size = pen.style.labelSize;
  const [entry, middle, exit] = [point(-g - c, -radius), point(b / 2, -radius), point(b + g + c, -radius)];
  const body = Math.max(6, 1.5 * size);
  hatch(pen, [[point(0, 0), point(b, 0), point(b, body), point(0, body)]], { spacing: 1.6 });
  pen.line('outline', point(0, body), point(0, -h), point(b, -h), point(b, body));
  pen.line('outline', point(0, 0), point(b, 0));
  breakLine(pen, point(0, body), point(b, body));

  pen.circle('fine', entry, radius);
  pen.circle('fine', exit, radius);
  pen.circle('outline', middle, radius);
  const past = 2.5;
  pen.line('centre', point(entry.x - past, -radius), point(exit.x + past, -radius));
  pen.line('centre', point(middle.x, -2 * radius - past), point(middle.x, past - radius));

  const [first = '', second = '', third = ''] = names;
  const level = -2 * radius - 0.5 * size;
  pen.text(first, point(entry.x - 0.5 * size, level), { anchor: 'end', sit: 'above' });
  pen.text(second, point(middle.x, level - past), { sit: 'above' });
  const { right } = pen.text(third, point(exit.x + 0.5 * size, level), { anchor: 'start', sit: 'above' });
  const top = -2 * radius - Math.max(6, pen.textSize(second).height + 0.8 * size + past);
  widthDimension(pen, { from: entry, to: exit, y: top, label: travel });

  const lane = body + Math.max(5, 1.2 * size);
  chainDimension(pen, lane, [
    { at: entry, letter: 'c' },
    { at: point(-g, -radius), letter: 'g' },
    { at: point(0, body), letter: 'b' },
    { at: point(b, body), letter: 'g' },
    { at: point(b + g, -radius), letter: 'c' },
    { at: exit },
  ]);
  const x = Math.max(exit.x + radius, right) + Math.max(4, size);
  heightDimension(pen, { from: point(b, -h), to: point(b, 0), x, label: 'depth h', side: 'right' });
  return lane;
}
