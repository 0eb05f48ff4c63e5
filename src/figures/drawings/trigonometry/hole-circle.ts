import { z } from 'zod';
import { cutOff, holeCircle as setOut } from '../../../geometry/trigonometry/circle.js';
import { textBeyond } from '../../drafting/aligned.js';
import { isClear } from '../../drafting/clear.js';
import { heightDimension, widthDimension } from '../../drafting/dimension.js';
import { legend } from '../../drafting/legend.js';
import { onBearing, type Point, point } from '../../drafting/point.js';
import { firstThatFits, scaleName, scalesNear } from '../../drafting/scale.js';
import { degrees, length as inWords } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { count, length, word } from '../../given.js';
import { Pen } from '../../pen.js';
import { bearingOf } from './angle-arc.js';

/** Every hole numbered, or the first three and the last, or fewer yet: always the second, which is measured. */
const NUMBERED: readonly ((i: number, holes: number) => boolean)[] = [
  () => true,
  (i, holes) => i < 3 || i === holes - 1,
  (i) => i < 2,
  (i) => i === 1,
];

/** Holes round a circle, and where the second stands from the datum. */
export const holeCircle = defineFigure({
  name: 'hole-circle',
  title: 'A hole circle by coordinates',
  given: z.strictObject({
    holes: count(2, 36),
    diameter: length(1, 5000),
    startAngle: z.number().min(-360).max(360).describe('an angle in degrees, -360 to 360').default(0),
    datum: word('centre', 'edge').default('centre'),
  }),
  draw({ holes, diameter, startAngle, datum }, style) {
    const radius = diameter / 2;
    const shift = datum === 'edge' ? radius : 0;
    const places = setOut(holes, diameter, startAngle, { x: shift, y: shift });
    const { x = 0, y = 0 } = places[1] ?? {};
    const { chord } = cutOff(diameter, 360 / holes);
    const mm = (value: number): string => inWords(value, style);
    const [from, along, up] =
      datum === 'edge'
        ? ['the left and lower edges', 'the left edge', 'the lower edge']
        : ['the centre', 'the centre', 'the centre'];
    const label =
      `${holes} holes on a circle of ${mm(diameter)}, numbered anticlockwise, measured from ${from}: ` +
      `hole 2 stands ${mm(x)} along and ${mm(y)} up.`;
    const ways = NUMBERED.flatMap((numbered) =>
      scalesNear(diameter, 55).map((scale) => ({ scale, numbered })),
    );
    return firstThatFits(ways, style, ({ scale, numbered }) => {
      const pen = new Pen(style);
      const ring = { centre: point(shift * scale, -shift * scale), radius: radius * scale };
      const drawn = places.map((hole) => point(hole.x * scale, -hole.y * scale));
      drawRing(pen, ring, drawn, datum);
      measureSecond(pen, ring, drawn[1] ?? ring.centre);
      nameHoles(pen, ring, drawn, numbered);
      if (!isClear(pen)) return undefined;
      legend(pen, point(pen.extent.left, pen.extent.bottom + style.labelSize), [
        { letter: 'D', meaning: 'hole circle', value: mm(diameter) },
        { letter: 'A', meaning: 'from hole to hole', value: degrees(360 / holes) },
        ...(startAngle === 0 ? [] : [{ letter: 'A_1', meaning: 'hole 1', value: degrees(startAngle) }]),
        { letter: 'x_2', meaning: `hole 2, from ${along}`, value: mm(x) },
        { letter: 'y_2', meaning: `hole 2, from ${up}`, value: mm(y) },
        { letter: 'c', meaning: 'chord, hole to hole', value: mm(chord) },
      ]);
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** The circle of holes as drawn; the datum is at the origin. */
interface Ring {
  readonly centre: Point;
  readonly radius: number;
}

/** How far axes and edges run on past the circle, mm. */
const PAST = 4;

const holeSize = ({ radius }: Ring, holes: number): number =>
  Math.min(2.2, Math.max(0.6, Math.min(0.07 * radius, (0.9 * radius) / holes)));

/** The circle, its axes or the edges that touch it, and the holes. */
function drawRing(pen: Pen, ring: Ring, holes: readonly Point[], datum: 'centre' | 'edge'): void {
  const { centre, radius } = ring;
  pen.circle('centre', centre, radius);
  for (const way of [point(1, 0), point(0, 1)]) {
    const at = (by: number): Point => point(centre.x + way.x * by, centre.y + way.y * by);
    pen.line('centre', at(-radius - (datum === 'edge' ? -1 : PAST)), at(radius + PAST));
  }
  if (datum === 'edge')
    pen.line('outline', point(0, -2 * radius - PAST), point(0, 0), point(2 * radius + PAST, 0));
  pen.circle('dimension', point(0, 0), 0.8, 'ink');
  for (const hole of holes) pen.circle('outline', hole, holeSize(ring, holes.length), 'paper');
}

/** Both coordinates of the second hole, each on the side where its line runs clear of the circle. */
function measureSecond(pen: Pen, { centre, radius }: Ring, hole: Point): void {
  const size = pen.style.labelSize;
  const out = radius + PAST + 1.6 * size;
  const up = hole.y <= centre.y ? -1 : 1;
  const right = hole.x >= centre.x ? 1 : -1;
  if (Math.abs(hole.x) > 0.5) {
    const from = point(0, centre.y + up * (radius + PAST));
    widthDimension(pen, { from, to: hole, y: centre.y + up * out, label: 'x_2' });
  }
  if (Math.abs(hole.y) > 0.5) {
    const from = point(centre.x + right * (radius + PAST), 0);
    const side = right > 0 ? 'right' : 'left';
    heightDimension(pen, { from, to: hole, x: centre.x + right * out, label: 'y_2', side });
  }
}

/** Turns from straight inward at which a hole's number may stand, degrees. */
const TURNS = [0, 50, -50, 75, -75, 180, 130, -130];

function nameHoles(
  pen: Pen,
  ring: Ring,
  holes: readonly Point[],
  numbered: (i: number, holes: number) => boolean,
): void {
  for (const [i, hole] of holes.entries()) {
    if (!numbered(i, holes.length)) continue;
    const inward = bearingOf(hole, ring.centre);
    const ways = TURNS.map((turn) => onBearing(1, inward + (turn * Math.PI) / 180));
    textBeyond(pen, `${i + 1}`, hole, ways, holeSize(ring, holes.length) + 0.45 * pen.style.labelSize);
  }
}
