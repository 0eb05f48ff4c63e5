import { z } from 'zod';
import { pinionForms, wheelForms } from '../../../calculations/wheels/tooth-forms.js';
import type { Point as Place } from '../../../geometry/curves/point.js';
import { offCentre } from '../../../geometry/setting-up/centring.js';
import { cutOffCentre } from '../../../geometry/setting-up/leaning.js';
import { pinionLeaf } from '../../../geometry/wheels/pinion-outline.js';
import { wheelTooth } from '../../../geometry/wheels/wheel-outline.js';
import { wave } from '../../drafting/break-line.js';
import { isClear } from '../../drafting/clear.js';
import { widthDimension } from '../../drafting/dimension.js';
import { legend } from '../../drafting/legend.js';
import { onBearing, type Point, point } from '../../drafting/point.js';
import { ENLARGEMENTS, firstThatFits, scaleName } from '../../drafting/scale.js';
import { degrees, length as inWords, plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { count, length, toothModule, word } from '../../given.js';
import { Pen } from '../../pen.js';

const LEAVES = ['6', '7', '8', '10', '12', '16'] as const;

/** Chords may stand off their arcs by so much on the paper, mm. */
const FINE = 0.02;

/** Teeth of the wheel shown to either side of the first space, and most that the pinion is across on the paper, mm. */
const SHOWN = 2;
const PINION = 52;

/** A wheel and a pinion cut with the same cutter error: the smaller the work, the more its teeth lean. */
export const leaningTeeth = defineFigure({
  name: 'leaning-teeth',
  title: 'Teeth that lean',
  given: z
    .strictObject({
      teeth: count(20, 200),
      leaves: z.preprocess((value) => (typeof value === 'number' ? String(value) : value), word(...LEAVES)),
      module: toothModule(),
      offset: length(0.005, 2),
    })
    .refine((g) => g.offset <= 0.6 * g.module, {
      path: ['offset'],
      message: 'at most six tenths of the module',
    }),
  draw(given, style) {
    const leaves = Number(given.leaves);
    const { teeth, module, offset } = given;
    const lean = [teeth, leaves].map((n) => degrees(offCentre(n * module, offset).leanAngle));
    const mm = (value: number): string => inWords(value, style);
    const label =
      `Spaces cut with the cutter ${mm(offset)} off centre, module ${plain(module)}: those of a wheel of ${teeth} ` +
      `teeth lean ${lean[0]}, those of a pinion of ${leaves} leaves ${lean[1]}.`;
    const scales = ENLARGEMENTS.filter((scale) => (leaves + 2) * module * scale <= PINION);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      const tips = drawWheel(pen, given, scale);
      drawPinion(pen, { ...given, leaves }, scale, tips);
      if (!isClear(pen)) return undefined;
      legend(pen, point(pen.extent.left, pen.extent.bottom + style.labelSize), [
        { letter: 'e', meaning: 'cutter off centre', value: mm(offset) },
        { letter: '1', meaning: 'spaces of the wheel lean', value: lean[0] ?? '' },
        { letter: '2', meaning: 'spaces of the pinion lean', value: lean[1] ?? '' },
      ]);
      return pen.finish(label, scaleName(scale));
    });
  },
});

interface Pair {
  readonly teeth: number;
  readonly module: number;
  readonly offset: number;
}

/** The teeth about the top of the wheel; its axis stands at the origin, far below. Gives back the level of its tips. */
function drawWheel(
  pen: Pen,
  { teeth, leaves, module, offset }: Pair & { leaves: string },
  scale: number,
): number {
  const size = pen.style.labelSize;
  const { addendum, dedendum } = wheelForms['2.95'];
  const tooth = wheelTooth({ teeth, leaves: Math.min(teeth, Number(leaves)), module, addendum, dedendum });
  const radius = (module * teeth) / 2;
  const half = (2 * Math.PI * SHOWN) / teeth;
  const run = stretch(cutOffCentre(tooth, teeth, offset, FINE / scale).flat(), half).map((p) =>
    drawn(p, scale),
  );
  const root = (radius - dedendum * module) * scale;
  const body = root - Math.max(9, 2 * size);
  const [first, last] = [run[0], run.at(-1)] as [Point, Point];
  const [left, right] = [onBearing(body, -half), onBearing(body, half)];
  pen.stroke('outline', (trace) => trace.through(run));
  pen.stroke('fine', (trace) => wave(trace.moveTo(last), last, left));
  pen.stroke('fine', (trace) => wave(trace.moveTo(left), left, right));
  pen.stroke('fine', (trace) => wave(trace.moveTo(right), right, first));
  const tips = -(radius + addendum * module) * scale;
  sightLines(pen, {
    axis: point(0, 0),
    radius: radius * scale,
    offset: offset * scale,
    name: '1',
    tips,
    foot: -body,
  });
  pen.text(`wheel, ${teeth} teeth`, point(0, Math.max(-body, left.y) + 0.9 * size), { sit: 'below' });
  return tips;
}

/** The whole pinion, to the right of what is drawn, its tips level with the wheel's. */
function drawPinion(
  pen: Pen,
  { leaves, module, offset }: Omit<Pair, 'teeth'> & { leaves: number },
  scale: number,
  tips: number,
): void {
  const size = pen.style.labelSize;
  const form = pinionForms[leaves as keyof typeof pinionForms];
  const radius = (module * leaves) / 2;
  const outer = (radius + form.addendum * module) * scale;
  const axis = point(pen.extent.right + outer + 3 * size, tips + outer);
  const outlines = cutOffCentre(pinionLeaf({ leaves, module, ...form }), leaves, offset, FINE / scale);
  pen.stroke('outline', (trace) => {
    for (const outline of outlines)
      trace
        .through(outline.map((p) => drawn(p, scale)).map(({ x, y }) => point(axis.x + x, axis.y + y)))
        .close();
  });
  pen.line('centre', point(axis.x - outer - 2, axis.y), point(axis.x + outer + 2, axis.y));
  pen.line('centre', point(axis.x, axis.y - outer - 2), point(axis.x, axis.y + outer + 2));
  sightLines(pen, {
    axis,
    radius: radius * scale,
    offset: offset * scale,
    name: '2',
    tips,
    foot: axis.y + outer + 2,
  });
  const below = axis.y + outer + 2;
  widthDimension(pen, {
    from: point(axis.x, below),
    to: point(axis.x + offset * scale, below),
    y: below + Math.max(4, size),
    label: 'e',
  });
  pen.text(`pinion, ${leaves} leaves`, point(axis.x, pen.extent.bottom + 0.6 * size), { sit: 'below' });
}

/** The line that the cutter's middle went along, and the radius to where it crosses the pitch circle. */
function sightLines(
  pen: Pen,
  how: { axis: Point; radius: number; offset: number; name: string; tips: number; foot: number },
): void {
  const { axis, radius, offset, name, tips, foot } = how;
  const size = pen.style.labelSize;
  const top = tips - Math.max(7, 1.8 * size);
  pen.line('dimension', point(axis.x + offset, foot), point(axis.x + offset, top));
  const lean = Math.asin(offset / radius);
  const upTo = (level: number): Point => onBearing((axis.y - level) / Math.cos(lean), lean, axis);
  pen.line('fine', upTo(Math.min(foot, axis.y)), upTo(top));
  pen.text(name, point(upTo(top).x, top - 0.4 * size), { sit: 'above', weight: 600 });
}

/** A place of the geometry on the paper. */
const drawn = ({ x, y }: Place, scale: number): Point => point(x * scale, -y * scale);

/** The stretch of an outline about its top, so far to either side; radians. */
function stretch(outline: readonly Place[], half: number): Place[] {
  const inside = outline.map(({ x, y }) => Math.abs(Math.atan2(x, y)) <= half);
  const start = inside.findIndex((is, i) => is && !inside.at(i - 1));
  const turned = [...outline.slice(start), ...outline.slice(0, start)];
  return turned.slice(
    0,
    turned.findIndex(({ x, y }) => Math.abs(Math.atan2(x, y)) > half),
  );
}
