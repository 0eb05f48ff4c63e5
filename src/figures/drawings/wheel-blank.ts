import { z } from 'zod';
import { widthDimension } from '../drafting/dimension.js';
import { hatch } from '../drafting/hatch.js';
import { notesAt } from '../drafting/leader.js';
import { legend } from '../drafting/legend.js';
import { point } from '../drafting/point.js';
import { firstThatFits, REDUCTIONS, scaleName } from '../drafting/scale.js';
import { length as inWords, plain } from '../drafting/wording.js';
import { defineFigure } from '../figure.js';
import { count, length, toothModule } from '../given.js';
import { Pen } from '../pen.js';

/** True scale wherever it fits: sizes written beside the blank, or, where that is too wide, listed under it. */
const WAYS = REDUCTIONS.flatMap((scale) => [true, false].map((beside) => ({ scale, beside })));

/** The blank in section beside its face, with the three circles of the wheel to come. */
export const wheelBlank = defineFigure({
  name: 'wheel-blank',
  title: 'The wheel blank',
  given: z
    .strictObject({
      teeth: count(6, 1000),
      module: toothModule(),
      outsideDiameter: length(0.5, 2000),
      pitchDiameter: length(0.5, 2000),
      rootDiameter: length(0.5, 2000),
      thickness: length(0.1, 50).default(2),
      bore: length(0.1, 500).default(6),
    })
    .refine((g) => g.pitchDiameter < g.outsideDiameter, {
      path: ['pitchDiameter'],
      message: 'a pitch circle inside the blank',
    })
    .refine((g) => g.rootDiameter < g.pitchDiameter, {
      path: ['rootDiameter'],
      message: 'a root circle inside the pitch circle',
    })
    .refine((g) => g.bore < g.rootDiameter, {
      path: ['bore'],
      message: 'a bore smaller than the root circle',
    }),
  draw(given, style) {
    const mm = (value: number): string => inWords(value, style);
    const label =
      `Section and face of the blank for a wheel of ${given.teeth} teeth, module ${plain(given.module)}: ` +
      `blank ${mm(given.outsideDiameter)}, pitch circle ${mm(given.pitchDiameter)}, ` +
      `root circle ${mm(given.rootDiameter)}, ${mm(given.thickness)} thick, bore ${mm(given.bore)}.`;
    return firstThatFits(WAYS, style, ({ scale, beside }) => {
      const pen = new Pen(style);
      const size = style.labelSize;
      const sizes: Sizes = {
        outside: (given.outsideDiameter / 2) * scale,
        pitch: (given.pitchDiameter / 2) * scale,
        root: (given.rootDiameter / 2) * scale,
        bore: (given.bore / 2) * scale,
        thickness: given.thickness * scale,
      };
      drawBlank(pen, sizes, [mm(given.thickness), 'thick']);
      const rows = [
        { letter: 'd_a', meaning: 'blank', value: mm(given.outsideDiameter) },
        { letter: 'd', meaning: 'pitch circle', value: mm(given.pitchDiameter) },
        { letter: 'd_f', meaning: 'root', value: mm(given.rootDiameter) },
        { letter: 'D', meaning: 'bore', value: mm(given.bore) },
      ];
      const words = rows.map(({ letter, meaning, value }) =>
        beside ? `${meaning} ${letter === 'D' ? '' : `${letter} = `}${value}` : letter,
      );
      name(pen, sizes, words);
      if (!beside) legend(pen, point(pen.extent.left, pen.extent.bottom + size), rows);
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** As drawn: radii about the origin, and thickness. */
interface Sizes {
  readonly outside: number;
  readonly pitch: number;
  readonly root: number;
  readonly bore: number;
  readonly thickness: number;
}

function drawBlank(
  pen: Pen,
  { outside, pitch, root, bore, thickness }: Sizes,
  label: readonly string[],
): void {
  const size = pen.style.labelSize;
  const centre = point(0, 0);
  pen.circle('outline', centre, outside);
  pen.circle('centre', centre, pitch);
  pen.circle('hidden', centre, root);
  pen.circle('outline', centre, bore);

  const right = -outside - Math.max(8, 3 * size);
  const left = right - thickness;
  for (const [inner, outer] of [
    [-bore, -outside],
    [bore, outside],
  ] as const) {
    const corners = [point(left, inner), point(left, outer), point(right, outer), point(right, inner)];
    hatch(pen, [corners], { spacing: 1.4 });
    pen.polygon('outline', corners);
  }
  for (const side of [left, right]) pen.line('outline', point(side, -bore), point(side, bore));

  const past = outside + 3;
  pen.line('centre', point(left - 3, 0), point(past, 0));
  pen.line('centre', point(0, -past), point(0, past));
  const y = outside + pen.textSize(label).height + 0.5 * size + 1;
  widthDimension(pen, { from: point(left, outside), to: point(right, outside), y, label });
}

/** A note to each circle, at heights that keep the lines from crossing. */
function name(
  pen: Pen,
  { outside, pitch, root, bore }: Sizes,
  [blank = '', ofPitch = '', ofRoot = '', ofBore = '']: string[],
): void {
  const onCircle = (radius: number, share: number) => {
    const y = outside * share;
    return point(Math.sqrt(Math.max(0, radius ** 2 - y ** 2)), y);
  };
  notesAt(pen, outside + Math.max(6, 2.5 * pen.style.labelSize), [
    { text: blank, tip: onCircle(outside, -0.6) },
    { text: ofPitch, tip: onCircle(pitch, -0.36) },
    { text: ofRoot, tip: onCircle(root, -0.14) },
    { text: ofBore, tip: point(bore * 0.8, bore * 0.6) },
  ]);
}
