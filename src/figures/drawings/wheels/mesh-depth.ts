import { z } from 'zod';
import { pairOf } from '../../../calculations/wheels/pair.js';
import { point } from '../../drafting/point.js';
import { firstThatFits, scaleName } from '../../drafting/scale.js';
import { length as inWords, plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { count, toothModule } from '../../given.js';
import { Pen } from '../../pen.js';
import { drawMesh, meshReach } from './mesh-view.js';
import { SCALES } from './teeth.js';

/** A module is drawn no larger than this, mm. */
const LARGEST = 6;

/** Pitch circles reach so many pitches to either side: past the last tooth that is shown whole. */
const ARC = 1.8;

const DEPTHS = ['deep', 'right', 'shallow'] as const;
type Depth = (typeof DEPTHS)[number];

const listed = (value: unknown): unknown =>
  typeof value === 'string' ? value.split(',').map((one) => one.trim()) : value;

/** How far apart the pitch circles stand, in what is too much or little; and what is written under them. */
const PANELS: Readonly<Record<Depth, { readonly gap: number; readonly words: readonly string[] }>> = {
  deep: { gap: -1, words: ['too deep', 'pitch circles', 'overlap'] },
  right: { gap: 0, words: ['right', 'pitch circles', 'touch'] },
  shallow: { gap: 1, words: ['too shallow', 'pitch circles', 'stand apart'] },
};

/** Too deep, right and too shallow, side by side, each with its pitch circles. */
export const meshDepthFigure = defineFigure({
  name: 'mesh-depth',
  title: 'Too deep, right and too shallow',
  given: z
    .strictObject({
      teeth: count(20, 160),
      leaves: count(6, 24),
      module: toothModule(),
      modules: z
        .number()
        .min(0.1)
        .max(0.6)
        .default(0.25)
        .describe('how far out of depth, in modules, 0.1 to 0.6'),
      show: z
        .preprocess(listed, z.array(z.enum(DEPTHS)).min(1).max(3))
        .default([...DEPTHS])
        .describe(`one or more of ${DEPTHS.join(', ')}`),
    })
    .refine((g) => g.leaves <= g.teeth, {
      path: ['leaves'],
      message: 'at most as many as the wheel has teeth',
    }),
  draw(given, style) {
    const { teeth, leaves, module, modules, show } = given;
    const out = inWords(modules * module, style);
    const panels = show.map((depth) => ({
      // With fewer there are words beside the figure.
      words: show.length < DEPTHS.length ? PANELS[depth].words.slice(0, 1) : PANELS[depth].words,
      pair: pairOf(
        { ...given, addendum: 'practical' },
        module * ((teeth + leaves) / 2 + modules * PANELS[depth].gap),
      ),
    }));
    const told: Readonly<Record<Depth, string>> = {
      deep: `too deep by ${out}, the pitch circles overlapping`,
      right: 'right, the circles touching',
      shallow: `too shallow by ${out}, the circles apart`,
    };
    const label =
      `A wheel of ${teeth} teeth and a pinion of ${leaves} leaves, module ${plain(module)}: ` +
      `${show.map((depth) => told[depth]).join('; ')}.`;
    const scales = SCALES.filter((scale) => scale <= 0.1 || module * scale <= LARGEST);
    return firstThatFits(scales, style, (scale) => {
      const size = module * scale;
      if (size < 1.4) return undefined;
      const pen = new Pen(style);
      const reaches = panels.map(({ pair }) => meshReach(pair, size));
      const side = Math.max(...reaches.map((reach) => reach.side));
      const down = Math.max(...reaches.map((reach) => reach.down));
      const widest = Math.max(...panels.map(({ words }) => pen.textSize(words).width));
      const apart = Math.max(2 * side + 4, widest + 4);
      panels.forEach(({ pair, words }, i) => {
        const at = point(i * apart, 0);
        const up = reaches[i]?.up ?? 0;
        // A tooth on the line of centres, and the pinion half-way between its two touches.
        const wheel = Math.PI / 2 / teeth;
        const space = (2 * Math.PI - 2 * pair.leaf.leafThickness) / leaves;
        drawMesh(pen, { pair, wheel, pinion: space / 2 }, at, size);
        const [wheelRadius, pinionRadius] = [(teeth / 2) * size, (leaves / 2) * size];
        const half = (ARC * 2 * Math.PI) / teeth;
        pen.stroke('centre', (trace) => trace.arc(point(at.x, wheelRadius), wheelRadius, -half, half));
        const pinionCentre = point(at.x, (teeth / 2 - pair.centres) * size);
        if (leaves <= 12) pen.circle('centre', pinionCentre, pinionRadius);
        else {
          const arc = (ARC * 2 * Math.PI) / leaves;
          pen.stroke('centre', (trace) =>
            trace.arc(pinionCentre, pinionRadius, Math.PI - arc, Math.PI + arc),
          );
        }
        pen.line('centre', point(at.x, down + 1), point(at.x, -up - 3));
        pen.text(words, point(at.x, down + 1 + 0.6 * style.labelSize), { sit: 'below' });
      });
      return pen.finish(label, scaleName(scale));
    });
  },
});
