import { z } from 'zod';
import { cornersOf, measured, type Triangle } from '../../../geometry/trigonometry/triangle.js';
import { type Corner, caseOf, type Triple, third } from '../../../geometry/trigonometry/triangle-case.js';
import { leftHand, textBeyond } from '../../drafting/aligned.js';
import { isClear } from '../../drafting/clear.js';
import { lane, widthDimension } from '../../drafting/dimension.js';
import { type LegendRow, legend } from '../../drafting/legend.js';
import { along, distance, type Point, point } from '../../drafting/point.js';
import { firstThatFits, scaleName, scalesNear } from '../../drafting/scale.js';
import { degrees, length as inWords } from '../../drafting/wording.js';
import { defineFigure, type FigureStyle } from '../../figure.js';
import { Pen } from '../../pen.js';
import { markAngle } from './angle-arc.js';

const side = () => z.number().min(0.01).max(10_000).describe('a length in mm, 0.01 to 10000').optional();
const angle = () => z.number().min(1).max(178).describe('an angle in degrees, 1 to 178').optional();

const ANGLES = ['A', 'B', 'C'] as const;
const SIDES = ['a', 'b', 'c'] as const;

type Given = Readonly<Partial<Record<(typeof ANGLES | typeof SIDES)[number], number | undefined>>>;

/** Thinner than this the letters at a corner do not know which side they belong to, degrees. */
const THINNEST = 8;

/** The corners of each triangle with the parts given; none for parts that are not three with a side among them. */
function triangles(given: Given): Triple<Point>[] {
  const sides = SIDES.filter((key) => given[key] !== undefined).length;
  const angles = ANGLES.filter((key) => given[key] !== undefined).length;
  return sides > 0 && sides + angles === 3 ? cornersOf(caseOf(given)) : [];
}

const isPlump = (corners: Triple<Point>): boolean => {
  const { A, B, C } = measured(corners);
  return Math.min(A, B, C) >= THINNEST;
};

/** A triangle with its sides and angles named; a second one of the same parts in dashes. */
export const triangle = defineFigure({
  name: 'triangle',
  title: 'A triangle and its parts',
  given: z
    .strictObject({ a: side(), b: side(), c: side(), A: angle(), B: angle(), C: angle() })
    .refine((given) => triangles(given).length > 0, {
      path: ['a'],
      message: 'three of a, b, c, A, B and C, a side among them, that make a triangle',
    })
    .refine((given) => triangles(given).every(isPlump), {
      path: ['a'],
      message: `parts that make a triangle with no angle under ${THINNEST}°`,
    }),
  draw(given, style) {
    const [first, second] = triangles(given) as [Triple<Point>, Triple<Point>?];
    const parts = measured(first);
    const swing = second && swingOf(given, measured(second));
    const scales = scalesNear(Math.max(parts.a, parts.b, parts.c), 70);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      const onPaper = (corners: Triple<Point>): Triple<Point> => {
        const [p, q, r] = corners.map(({ x, y }) => point(x * scale, -y * scale));
        return [p as Point, q as Point, r as Point];
      };
      const corners = onPaper(first);
      pen.polygon('outline', corners);
      for (const i of [0, 1, 2] as const) {
        nameCorner(pen, corners, i);
        if (i !== swing?.base) nameSide(pen, corners, i);
      }
      if (second && swing) drawSecond(pen, corners, onPaper(second), swing);
      if (!isClear(pen)) return undefined;
      legend(pen, point(pen.extent.left, pen.extent.bottom + style.labelSize), rows(parts, swing, style));
      return pen.finish(inOneSentence(parts, swing, style), scaleName(scale));
    });
  },
});

/** What differs in a second triangle: the corner that swings, the base it swings along, and the parts it has. */
interface Swing {
  readonly corner: Corner;
  readonly base: Corner;
  readonly parts: Triangle;
}

function swingOf(given: Given, parts: Triangle): Swing | undefined {
  const found = caseOf(given);
  return found.kind === 'SSA'
    ? { corner: found.other, base: third(found.at, found.other), parts }
    : undefined;
}

/** A corner, and the other two. */
const from = (corners: Triple<Point>, i: Corner): Triple<Point> => [
  corners[i],
  corners[((i + 1) % 3) as Corner],
  corners[((i + 2) % 3) as Corner],
];

/** The corner's letter, on its far side from the triangle, and a mark for its angle. */
function nameCorner(pen: Pen, corners: Triple<Point>, i: Corner): void {
  const [at, p, q] = from(corners, i);
  const shortest = Math.min(distance(at, p), distance(at, q));
  markAngle(pen, at, p, q, Math.min(6, 0.3 * shortest));
  const inward = along(along(at, p, 1 / distance(at, p)), along(at, q, 1 / distance(at, q)), 0.5);
  const size = distance(at, inward);
  const out = point((at.x - inward.x) / size, (at.y - inward.y) / size);
  textBeyond(pen, ANGLES[i], at, out, 0.3 * pen.style.labelSize, { weight: 600 });
}

/** The side's letter, outside its middle. */
function nameSide(pen: Pen, corners: Triple<Point>, i: Corner): void {
  const [at, p, q] = from(corners, i);
  const left = leftHand(p, q);
  const inside = (at.x - p.x) * left.x + (at.y - p.y) * left.y > 0;
  textBeyond(
    pen,
    SIDES[i],
    along(p, q, 0.5),
    inside ? point(-left.x, -left.y) : left,
    0.3 * pen.style.labelSize,
  );
}

/** The side swung to where it also meets the base, in dashes, and both lengths of the base under it. */
function drawSecond(pen: Pen, first: Triple<Point>, second: Triple<Point>, { corner, base }: Swing): void {
  const size = pen.style.labelSize;
  const [near, far] = [second[corner], first[corner]];
  const start = first[third(corner, base)];
  pen.line('hidden', second[base], near);
  pen.text(`${ANGLES[corner]}′`, point(near.x + 0.4 * size, near.y + 0.4 * size), {
    anchor: 'start',
    sit: 'below',
    weight: 600,
  });
  const y = near.y + 2.4 * size;
  widthDimension(pen, { from: start, to: near, y, label: `${SIDES[base]}′` });
  widthDimension(pen, { from: start, to: far, y: y + lane(pen) + 0.5, label: SIDES[base] });
}

function rows(parts: Triangle, swing: Swing | undefined, style: FigureStyle): LegendRow[] {
  const sideRow = (letter: string, value: number) => ({
    letter,
    meaning: 'side',
    value: inWords(value, style),
  });
  const angleRow = (letter: string, value: number) => ({ letter, meaning: 'angle', value: degrees(value) });
  const own = [
    ...SIDES.map((letter) => sideRow(letter, parts[letter])),
    ...ANGLES.map((letter) => angleRow(letter, parts[letter])),
  ];
  if (!swing) return own;
  const [letter, base] = [ANGLES[swing.corner], SIDES[swing.base]];
  const rest = ANGLES[swing.base];
  return [
    ...own,
    { ...sideRow(`${base}′`, swing.parts[base]), meaning: 'side of the second' },
    { ...angleRow(`${letter}′`, swing.parts[letter]), meaning: 'angle of the second' },
    { ...angleRow(`${rest}′`, swing.parts[rest]), meaning: 'angle of the second' },
  ];
}

function inOneSentence(parts: Triangle, swing: Swing | undefined, style: FigureStyle): string {
  const list = (words: readonly string[]): string => `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
  const sides = list(SIDES.map((letter) => `${letter} ${inWords(parts[letter], style)}`));
  const angles = list(ANGLES.map((letter) => `${letter} ${degrees(parts[letter])}`));
  const [letter, base] = swing ? [ANGLES[swing.corner], SIDES[swing.base]] : (['A', 'a'] as const);
  const also = swing
    ? `; in dashes a second of the same parts, with ${letter} ${degrees(swing.parts[letter])} and ${base} ${inWords(swing.parts[base], style)}`
    : '';
  return `Triangle with sides ${sides}, opposite the angles ${angles}${also}.`;
}
