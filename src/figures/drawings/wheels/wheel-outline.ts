import { z } from 'zod';
import { pairOf } from '../../../calculations/wheels/pair.js';
import { turnedPath } from '../../../geometry/curves/path.js';
import { wheelTooth } from '../../../geometry/wheels/wheel-outline.js';
import { notesAt } from '../../drafting/leader.js';
import { traceOutline } from '../../drafting/outline.js';
import { onBearing, point } from '../../drafting/point.js';
import { firstThatFits, scaleName } from '../../drafting/scale.js';
import { length as inWords, plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { count, toothModule, word } from '../../given.js';
import { Pen } from '../../pen.js';
import { SCALES } from './teeth.js';

/** A wheel is drawn no larger across than this, mm. */
const WIDEST = 90;

/** A whole cycloidal wheel, every tooth true to its curves, with its tip, pitch and root circles. */
export const wheelOutlineFigure = defineFigure({
  name: 'wheel-outline',
  title: 'A wheel, true to its curves',
  given: z
    .strictObject({
      teeth: count(6, 160),
      leaves: count(5, 60),
      module: toothModule(),
      addendum: word('practical', 'theoretical').default('practical'),
      root: word('flat', 'round').default('flat'),
    })
    .refine((g) => g.leaves <= g.teeth, {
      path: ['leaves'],
      message: 'at most as many as the wheel has teeth',
    }),
  draw(given, style) {
    const { teeth, leaves, module, addendum, root } = given;
    const pair = pairOf({ teeth, leaves, module, addendum }, (module * (teeth + leaves)) / 2);
    const wheel = { ...pair, module, root };
    const circles = [
      { name: 'tip circle', letter: 'd_a', diameter: module * (teeth + 2 * pair.addendum) },
      { name: 'pitch circle', letter: 'd', diameter: module * teeth },
      { name: 'root circle', letter: 'd_f', diameter: module * (teeth - 2 * pair.dedendum) },
    ];
    const sizes = circles.map(({ name, diameter }) => `${name} ${inWords(diameter, style)}`).join(', ');
    const label =
      `A whole wheel of ${teeth} teeth, module ${plain(module)}, for a pinion of ${leaves} leaves, its faces ` +
      `epicycloids and its flanks radial: ${sizes}.`;
    const across = circles[0]?.diameter ?? 0;
    const scales = SCALES.filter((scale) => scale <= 0.1 || across * scale <= WIDEST);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      const centre = point(0, 0);
      const tooth = turnedPath(wheelTooth({ ...wheel, module: module * scale }), Math.PI / 2);
      pen.strokeRound('outline', centre, teeth, (trace) => traceOutline(trace, tooth, centre, 1));
      const [tip = 0, pitch = 0, foot = 0] = circles.map(({ diameter }) => (diameter / 2) * scale);
      pen.circle('centre', centre, pitch);
      const arm = tip + 3;
      pen.line('centre', point(-arm, 0), point(arm, 0));
      pen.line('centre', point(0, -arm), point(0, arm));
      // Tip and root circles are named where a tooth and a space lie up on the right.
      const bearing = (steps: number): number => (steps * Math.PI) / teeth;
      const upper = 2 * Math.round(teeth / 12);
      const tips = [
        onBearing(tip, bearing(upper)),
        onBearing(pitch, bearing(upper + 2) + Math.PI / 2 / teeth),
        onBearing(foot, bearing(upper + 5)),
      ];
      notesAt(
        pen,
        arm + Math.max(5, 2 * style.labelSize),
        circles.map(({ name, letter, diameter }, i) => ({
          text: [name, `${letter} = ${inWords(diameter, style)}`],
          tip: tips[i] ?? centre,
        })),
      );
      return pen.finish(label, scaleName(scale));
    });
  },
});
