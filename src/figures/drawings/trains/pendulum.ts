import { z } from 'zod';
import { arrowhead, arrowLength } from '../../drafting/arrow.js';
import { heightDimension } from '../../drafting/dimension.js';
import { hatch } from '../../drafting/hatch.js';
import { notesAt } from '../../drafting/leader.js';
import { onBearing, point } from '../../drafting/point.js';
import { fitting, scaleName } from '../../drafting/scale.js';
import { length as inWords, plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { length } from '../../given.js';
import { Pen } from '../../pen.js';

/** The largest of these at which a pendulum is no longer than this, mm on paper. */
const SCALES = [5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01, 0.005] as const;
const LONGEST = 105;

/** Half the angle it is drawn swinging through, more than a clock's so that it shows; and the bob over the length. */
const SWING = (11 * Math.PI) / 180;
const BOB = 0.08;

/** A pendulum at rest and at both ends of its swing, with its length to the centre of oscillation. */
export const pendulum = defineFigure({
  name: 'pendulum',
  title: 'A pendulum and its length',
  given: z.strictObject({
    length: length(5, 20_000),
    secondsPerBeat: z
      .number()
      .min(0.05)
      .max(20)
      .describe('the time of a beat in seconds, 0.05 to 20')
      .optional(),
  }),
  draw({ length: long, secondsPerBeat }, style) {
    const size = style.labelSize;
    const beat = secondsPerBeat === undefined ? 'one beat' : `one beat, ${plain(secondsPerBeat)} s`;
    const label =
      `A pendulum ${inWords(long, style)} long from where it bends to its centre of oscillation; ` +
      `from one end of its swing to the other is ${beat}.`;
    const scale = SCALES.find((one) => long * one <= LONGEST) ?? 0.005;
    const pen = new Pen(style);
    const rod = long * scale;
    const bob = Math.max(3, BOB * rod);
    const [bend, centre] = [point(0, 0), point(0, rod)];

    const block = [point(-7, -6), point(7, -6), point(7, 0), point(-7, 0)];
    hatch(pen, [block], { spacing: 1.6 });
    pen.polygon('outline', block);
    for (const side of [-1, 1]) {
      const end = onBearing(rod, Math.PI + side * SWING);
      pen.line('hidden', bend, onBearing(rod - bob, Math.PI + side * SWING));
      pen.circle('hidden', end, bob);
    }
    pen.line('outline', bend, point(0, rod - bob));
    pen.circle('outline', centre, bob, 'paper');
    pen.circle('fine', centre, 0.6, 'ink');

    // The way of one beat, under the bobs.
    const under = rod + bob + 3;
    pen.stroke('fine', (trace) => trace.arc(bend, under, Math.PI + SWING, Math.PI - SWING));
    arrowhead(
      pen,
      onBearing(under, Math.PI - SWING),
      onBearing(under, Math.PI - SWING + arrowLength(pen) / under),
    );
    pen.text(beat, point(0, pen.extent.bottom + 0.4 * size), { sit: 'below' });

    const side = Math.sin(SWING) * rod + bob;
    heightDimension(pen, {
      from: bend,
      to: centre,
      x: -Math.max(side, 7) - Math.max(4, size),
      label: ['L =', inWords(long, style)],
      side: 'left',
    });
    notesAt(pen, Math.max(side, 7) + Math.max(6, 2 * size), [
      { text: 'bends here', tip: bend, via: point(9, Math.min(8, rod / 3)) },
      { text: ['centre of', 'oscillation'], tip: centre },
    ]);
    return fitting(style, pen.finish(label, scaleName(scale)));
  },
});
