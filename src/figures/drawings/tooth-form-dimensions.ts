import { arrow, arrowhead } from '../drafting/arrow.js';
import { heightDimension, OVERRUN, STAND_OFF } from '../drafting/dimension.js';
import { onBearing, point } from '../drafting/point.js';
import { length } from '../drafting/wording.js';
import type { Pen } from '../pen.js';
import { type DrawnTeeth, faceMiddle, toothCorners } from './tooth-outline.js';

/** True sizes, mm. */
interface Sizes {
  readonly addendum: number;
  readonly dedendum: number;
  readonly flankRadius: number;
  readonly tooth: number;
  readonly space: number;
}

/** Everything that is written about a drawn tooth. */
export function dimensionTooth(pen: Pen, teeth: DrawnTeeth, sizes: Sizes): void {
  heights(pen, teeth, sizes);
  widths(pen, teeth, sizes);
  const size = pen.style.labelSize;
  const { shape, pitchAngle } = teeth;

  const chainEnd = onBearing(shape.pitchRadius, -pitchAngle - 4 / shape.pitchRadius);
  pen.text(['pitch', 'circle'], point(chainEnd.x - 0.4 * size, chainEnd.y), { anchor: 'end' });

  const overSpace = onBearing(shape.tipRadius, -pitchAngle / 2).x;
  const note = `face radius ${length(sizes.flankRadius, pen.style)}`;
  // Over the space, but never across the tooth's own middle line.
  const right = Math.min(overSpace + pen.textSize(note).width / 2, -0.6 * size);
  const place = point(right, -shape.tipRadius - 0.5 * size);
  const { bottom } = pen.text(note, place, { anchor: 'end', sit: 'above' });
  arrow(pen, point(overSpace, bottom + 0.15 * size), faceMiddle(shape, 0));

  const inSpace = onBearing((shape.pitchRadius + shape.rootRadius) / 2, -pitchAngle / 2);
  const narrowest = (pitchAngle - 2 * shape.halfAngle) * shape.rootRadius - 2;
  const { width, height } = pen.textSize('space');
  const fits = width < narrowest && height < 0.7 * (shape.pitchRadius - shape.rootRadius);
  if (fits) pen.text('space', inSpace);
}

/** Addendum and dedendum end to end, and full depth beyond them. */
function heights(pen: Pen, { shape, end }: DrawnTeeth, sizes: Sizes): void {
  const mm = (value: number): string => length(value, pen.style);
  const size = pen.style.labelSize;
  const { tip, pitchAfter } = toothCorners(shape, 0);
  const edge = onBearing(shape.rootRadius, end).x;
  const least = Math.min(shape.tipRadius - shape.pitchRadius, shape.pitchRadius - shape.rootRadius);
  const twoLines = least > pen.textSize(['0', '0']).height + 1;
  const words = (name: string, value: number): string | string[] =>
    twoLines ? [name, mm(value)] : `${name} ${mm(value)}`;
  const addendum = words('addendum', sizes.addendum);
  const dedendum = words('dedendum', sizes.dedendum);
  const near = edge + Math.max(4, size);
  const widest = Math.max(pen.textSize(addendum).width, pen.textSize(dedendum).width);
  const far = near + OVERRUN + widest + 0.8 * size;

  // Levels are taken on the tooth's own middle; each extension line begins where the tooth really ends.
  const pitch = -shape.pitchRadius;
  const root = -shape.rootRadius;
  const side = 'right';
  heightDimension(pen, { from: tip, to: point(pitchAfter.x, pitch), x: near, label: addendum, side });
  heightDimension(pen, { from: point(near, pitch), to: point(edge, root), x: near, label: dedendum, side });
  const depth = ['full depth', mm(sizes.addendum + sizes.dedendum)];
  heightDimension(pen, { from: point(near, tip.y), to: point(near, root), x: far, label: depth, side });
}

/** Space and tooth along an arc under the rim, both ended by the flanks carried on. */
function widths(pen: Pen, { shape, pitchAngle, body }: DrawnTeeth, sizes: Sizes): void {
  const size = pen.style.labelSize;
  const radius = body - Math.max(4, size);
  const [first, second, third] = [shape.halfAngle - pitchAngle, -shape.halfAngle, shape.halfAngle];
  for (const bearing of [first, second, third]) {
    pen.line('dimension', onBearing(body - STAND_OFF, bearing), onBearing(radius - OVERRUN, bearing));
  }
  const stretch = (from: number, to: number): void => {
    pen.stroke('dimension', (trace) => trace.arc({ x: 0, y: 0 }, radius, from, to));
    const inward = (to - from) / 4;
    arrowhead(pen, onBearing(radius, from), onBearing(radius, from + inward));
    arrowhead(pen, onBearing(radius, to), onBearing(radius, to - inward));
  };
  stretch(first, second);
  stretch(second, third);
  const mm = (value: number): string => length(value, pen.style);
  const equal = mm(sizes.space) === mm(sizes.tooth);
  const words = equal
    ? [`space = tooth = ${mm(sizes.tooth)}`, 'half the circular pitch, along the pitch circle']
    : [`space ${mm(sizes.space)}, tooth ${mm(sizes.tooth)}`, 'along the pitch circle'];
  const below = point(onBearing(radius, second).x, onBearing(radius - OVERRUN, first).y + 0.3 * size);
  pen.text(words, below, { sit: 'below' });
}
