import { z } from 'zod';
import { leafFor } from '../../../calculations/wheels/pair.js';
import { turnedPath } from '../../../geometry/curves/path.js';
import { leafSide } from '../../../geometry/wheels/leaf.js';
import { pinionOutline } from '../../../geometry/wheels/pinion-outline.js';
import { notesAt } from '../../drafting/leader.js';
import { traceOutline } from '../../drafting/outline.js';
import { onBearing, type Point, point } from '../../drafting/point.js';
import { firstThatFits, scaleName } from '../../drafting/scale.js';
import { length as inWords, plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { count, toothModule, word } from '../../given.js';
import { Pen } from '../../pen.js';
import { SCALES } from './teeth.js';

/** A pinion is drawn no larger across than this, mm. */
const WIDEST = 75;

/** A whole pinion from its numbers: radial flanks, tips by arcs, pitch and root circles. */
export const pinionOutlineFigure = defineFigure({
  name: 'pinion-outline',
  title: 'A pinion, its flanks and tips',
  given: z.strictObject({
    leaves: count(6, 30),
    module: toothModule(),
    root: word('flat', 'round').default('flat'),
  }),
  draw({ leaves, module, root }, style) {
    const form = leafFor(leaves, 0);
    const mm = (value: number): string => inWords(value, style);
    const words = {
      tip: mm(form.tipRadius * module),
      pitch: mm(leaves * module),
      root: mm((leaves - 2 * form.dedendum) * module),
      leaf: mm(form.leafThickness * module),
    };
    const label =
      `A pinion of ${leaves} leaves, module ${plain(module)}, seen on its end: each leaf ${words.leaf} thick on the pitch ` +
      `circle of ${words.pitch}, flanks radial, tip two arcs of ${words.tip} radius, root circle ${words.root}.`;
    const across = module * (leaves + 2 * form.addendum);
    const scales = SCALES.filter((scale) => scale <= 0.1 || across * scale <= WIDEST);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      const centre = point(0, 0);
      const drawn = pinionOutline({ leaves, module: module * scale, ...form, root });
      const side = leafSide(leaves, form, module * scale);
      const foot = (leaves / 2 - form.dedendum) * module * scale;
      pen.stroke('outline', (trace) => traceOutline(trace, turnedPath(drawn, Math.PI / 2), centre, 1));
      pen.circle('centre', centre, side.pitchRadius);
      const arm = side.tipRadius + 3;
      pen.line('centre', point(-arm, 0), point(arm, 0));
      pen.line('centre', point(0, -arm), point(0, arm));
      // Named on the leaves round to the right: a tip, a flank, the pitch circle in a space, the root.
      const pitch = (2 * Math.PI) / leaves;
      const leaf = pitch * Math.max(1, Math.floor(leaves / 8));
      const middle = (side.pitchRadius + side.tipRadius) / 2;
      const tips: Point[] = [
        onBearing(middle, leaf + side.halfAngle - side.backAt(middle)),
        onBearing((foot + side.pitchRadius) / 2, leaf + side.halfAngle),
        onBearing(side.pitchRadius, leaf + 0.65 * pitch),
        onBearing(foot, leaf + 0.5 * pitch),
      ];
      const notes = [
        [`tip, radius ${words.tip}`],
        ['flank, radial'],
        ['pitch circle', `d = ${words.pitch}`],
        ['root circle', `d_f = ${words.root}`],
      ].map((text, i) => ({ text, tip: tips[i] ?? centre }));
      notesAt(
        pen,
        arm + Math.max(5, 2 * style.labelSize),
        notes.toSorted((a, b) => a.tip.y - b.tip.y),
      );
      return pen.finish(label, scaleName(scale));
    });
  },
});
