import { z } from 'zod';
import { type Arm, armSide, pegDiameters } from '../../../geometry/finishing/arm.js';
import { formatNumber } from '../../../units/format.js';
import { textBeyond } from '../../drafting/aligned.js';
import { isClear } from '../../drafting/clear.js';
import { chainDimension } from '../../drafting/dimension.js';
import { legend } from '../../drafting/legend.js';
import { type Point, point } from '../../drafting/point.js';
import { firstThatFits, scaleName, scalesNear } from '../../drafting/scale.js';
import { length as inWords } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { length } from '../../given.js';
import { Pen } from '../../pen.js';

/** Width of the rule on the paper, mm. */
const RULE = 7;

interface Given {
  readonly armWidthAtRim: number;
  readonly armWidthAtHub: number;
  readonly rimRadius: number;
  readonly hubRadius: number;
  readonly hubPegRadius: number;
  readonly rimPegRadius: number;
}

const armOf = (g: Given): Arm => ({ ...g, widthAtRim: g.armWidthAtRim, widthAtHub: g.armWidthAtHub });

const pegsOf = (g: Given): [number, number] => {
  const [one = 0, other = 0] = pegDiameters(armOf(g), [g.hubPegRadius, g.rimPegRadius]);
  return [one, other];
};

/** An arm with a peg near the hub and one near the rim, and a rule laid against both. */
export const crossingPegs = defineFigure({
  name: 'crossing-pegs',
  title: 'Pegs and rule for the side of an arm',
  given: z
    .strictObject({
      armWidthAtRim: length(0.2, 100),
      armWidthAtHub: length(0.2, 100),
      rimRadius: length(2, 300),
      hubRadius: length(0.5, 150),
      hubPegRadius: length(0.5, 300),
      rimPegRadius: length(1, 400),
    })
    .refine((g) => g.hubRadius <= 0.7 * g.rimRadius, {
      path: ['hubRadius'],
      message: 'at most seven tenths of the rim',
    })
    .refine((g) => g.armWidthAtHub <= 1.6 * g.hubRadius, {
      path: ['armWidthAtHub'],
      message: 'less than the hub',
    })
    .refine((g) => g.armWidthAtRim <= 0.8 * g.rimRadius, {
      path: ['armWidthAtRim'],
      message: 'at most eight tenths of the radius of the rim',
    })
    .refine((g) => g.rimPegRadius >= g.hubPegRadius + (pegsOf(g)[0] + pegsOf(g)[1]) / 2, {
      path: ['rimPegRadius'],
      message: 'a place clear of the other peg',
    })
    .refine((g) => Math.min(...pegsOf(g)) > 0.2, {
      path: ['rimPegRadius'],
      message: 'a place where the sides of the arm have not met',
    }),
  draw(given, style) {
    const [hubPeg, rimPeg] = pegsOf(given);
    const mm = (value: number): string => inWords(value, style);
    const lean = (-Math.atan2(armSide(armOf(given)).along.y, armSide(armOf(given)).along.x) * 180) / Math.PI;
    const label =
      `An arm ${mm(given.armWidthAtHub)} wide at the hub and ${mm(given.armWidthAtRim)} at the rim, with a peg of ` +
      `${mm(hubPeg)} at ${mm(given.hubPegRadius)} and one of ${mm(rimPeg)} at ${mm(given.rimPegRadius)} from the centre; ` +
      `a rule against both lies along its side.`;
    const reach = Math.max(given.rimRadius, given.rimPegRadius + rimPeg / 2);
    return firstThatFits(scalesNear(reach, 110), style, (scale) => {
      const pen = new Pen(style);
      drawArm(pen, given, [hubPeg, rimPeg], scale);
      if (!isClear(pen)) return undefined;
      legend(pen, point(pen.extent.left, pen.extent.bottom + style.labelSize), [
        { letter: '1', meaning: 'peg near the hub', value: mm(hubPeg) },
        { letter: '2', meaning: 'peg near the rim', value: mm(rimPeg) },
        { letter: 'l_1', meaning: 'first peg from the centre', value: mm(given.hubPegRadius) },
        {
          letter: 'l_2',
          meaning: 'second from the first',
          value: mm(given.rimPegRadius - given.hubPegRadius),
        },
        { letter: 'a', meaning: 'lean of the side', value: `${formatNumber(lean, 2)}°` },
      ]);
      return pen.finish(label, scaleName(scale));
    });
  },
});

/** The wheel's axis stands at the origin; the arm lies to the right, its upper side under the rule. */
function drawArm(pen: Pen, given: Given, pegs: readonly [number, number], scale: number): void {
  const size = pen.style.labelSize;
  const side = armSide(armOf(given));
  /** So far along the side from where it passes nearest to the axis, and so far out from it, mm on the paper. */
  const at = (along: number, out: number): Point =>
    point(
      side.along.x * along + side.out.x * (side.past * scale + out),
      -(side.along.y * along + side.out.y * (side.past * scale + out)),
    );
  const [hub, rim] = [given.hubRadius * scale, given.rimRadius * scale];
  const lower = (p: Point): Point => point(p.x, -p.y);
  const [foot, head] = [side.atHub, side.atRim].map(({ x, y }) => point(x * scale, -y * scale)) as [
    Point,
    Point,
  ];
  const bearing = ({ x, y }: Point): number => Math.atan2(x, -y);
  const open = Math.min(0.75, bearing(foot) - 0.25);
  pen.stroke('outline', (trace) => trace.arc(point(0, 0), hub, bearing(lower(foot)), Math.PI - open));
  const past = bearing(head) - Math.min(0.22, 9 / rim);
  pen.stroke('outline', (trace) => trace.arc(point(0, 0), rim, bearing(lower(head)), Math.PI - past));
  pen.line('outline', lower(foot), lower(head));

  const places = [given.hubPegRadius * scale, given.rimPegRadius * scale] as const;
  const last = Math.max(rim, places[1] + (pegs[1] / 2) * scale);
  const [from, to] = [Math.min(foot.x, places[0] - (pegs[0] / 2) * scale) - 5, last + 5];
  pen.polygon('outline', [at(from, 0), at(to, 0), at(to, RULE), at(from, RULE)], 'paper');
  textBeyond(
    pen,
    'rule',
    at((from + to) / 2, RULE),
    side.along.y === 0 ? point(0, -1) : upright(side.out),
    0.3 * size,
  );
  pen.line('centre', point(-3, 0), point(last + 4, 0));
  pen.line('centre', point(0, -4), point(0, 4));
  const below = Math.max(hub * Math.sin(open + 0.2), (Math.max(...pegs) / 2) * scale, -head.y, -foot.y) + 2;
  places.forEach((x, i) => {
    const radius = ((pegs[i] ?? 0) / 2) * scale;
    pen.circle('outline', point(x, 0), radius);
    pen.line('dimension', point(x, -Math.min(2, 0.8 * radius)), point(x, radius + 1));
    textBeyond(pen, `${i + 1}`, at(x, RULE), upright(side.out), 0.3 * size, { weight: 600 });
  });
  chainDimension(pen, below + Math.max(4, size), [
    { at: point(0, 4), letter: 'l_1' },
    { at: point(places[0], (pegs[0] / 2) * scale + 1), letter: 'l_2' },
    { at: point(places[1], (pegs[1] / 2) * scale + 1) },
  ]);
}

const upright = ({ x, y }: { x: number; y: number }): Point => point(x, -y);
