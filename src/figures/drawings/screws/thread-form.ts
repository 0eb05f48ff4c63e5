import { z } from 'zod';
import { formOf, shapeOf } from '../../../calculations/screws/forms.js';
import { flattened } from '../../../geometry/curves/path.js';
import { flankOf, reach } from '../../../geometry/screws/measure.js';
import { roundingRadius, type ThreadShape, threadGroove } from '../../../geometry/screws/profile.js';
import { threadSizes } from '../../../geometry/screws/thread.js';
import { arrow, arrowhead } from '../../drafting/arrow.js';
import { breakLine } from '../../drafting/break-line.js';
import { heightDimension, lane, widthDimension } from '../../drafting/dimension.js';
import { hatch } from '../../drafting/hatch.js';
import { legend } from '../../drafting/legend.js';
import { traceOutline } from '../../drafting/outline.js';
import { type Point, point } from '../../drafting/point.js';
import { ENLARGEMENTS, firstThatFits, scaleName } from '../../drafting/scale.js';
import { defineFigure } from '../../figure.js';
import { Pen } from '../../pen.js';
import { fine, isThread, nameOf, notThread, threadGiven } from './given.js';
import { threadRow } from './thread-row.js';

/** A pitch is drawn no wider than this, mm. */
const WIDEST = 50;

/** Two threads of a screw in section, much enlarged, with the triangle they are cut from. */
export const threadFormFigure = defineFigure({
  name: 'thread-form',
  title: 'The form of a screw thread',
  given: z.strictObject(threadGiven).refine(isThread, notThread),
  draw(given, style) {
    const { series, majorDiameter, pitch } = given;
    const shape = shapeOf(series, pitch, 'screw');
    const sizes = threadSizes(majorDiameter, shape);
    const nut = threadSizes(majorDiameter, shapeOf(series, pitch, 'basic')).rootDiameter;
    const mm = (value: number): string => fine(value, style);
    const form = formOf(series);
    const label =
      `Section of a ${form.name} thread, ${nameOf(given)}, major diameter ${mm(majorDiameter)}, pitch ${mm(pitch)}, ` +
      `flanks at ${shape.angle}°: depth ${mm(sizes.depth)}, crests ${form.crest.round ? 'rounded' : 'flat'}, roots rounded.`;
    const scales = ENLARGEMENTS.filter((scale) => scale === 1 || pitch * scale <= WIDEST);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      const level =
        Math.min(majorDiameter - sizes.pitchDiameter, sizes.pitchDiameter - sizes.rootDiameter) / 2;
      if (level * scale < pen.textSize('0').height + 0.5) return undefined;
      const foot = drawForm(pen, shape, scale);
      const off = (share: number) => (share < 0.15 ? ', an eighth of H' : ', a sixth of H');
      const told = series === 'ba' ? () => '' : off;
      legend(pen, point(pen.extent.left, foot + size(pen)), [
        { letter: 'P_t', meaning: 'pitch', value: mm(pitch) },
        { letter: 'A', meaning: 'angle between the flanks', value: `${shape.angle}°` },
        { letter: 'H', meaning: 'height of the sharp triangle', value: mm(sizes.sharpHeight) },
        { letter: 'h', meaning: 'depth of thread', value: mm(sizes.depth) },
        { letter: 'a', meaning: `off the crest${told(form.crest.share)}`, value: mm(shape.crest.off) },
        { letter: 'b', meaning: `off the root${told(form.root.share)}`, value: mm(shape.root.off) },
        {
          letter: 'r',
          meaning: 'radius at the root',
          value: mm(roundingRadius(shape.root.off, shape.angle)),
        },
        { letter: 'd', meaning: 'major diameter', value: mm(majorDiameter) },
        { letter: 'd_2', meaning: 'pitch diameter', value: mm(sizes.pitchDiameter) },
        { letter: 'd_3', meaning: 'core diameter of the screw', value: mm(sizes.rootDiameter) },
        { letter: 'd_1', meaning: 'minor diameter of the nut', value: mm(nut) },
      ]);
      return pen.finish(label, scaleName(scale));
    });
  },
});

const size = (pen: Pen): number => pen.style.labelSize;

/** Draws the section and its letters; the level half way up the sharp triangle is 0. Gives back its lowest level. */
function drawForm(pen: Pen, shape: ThreadShape, scale: number): number {
  const row = threadRow(shape, 2);
  const pitch = shape.pitch * scale;
  const right = 2 * pitch;
  const origin = point(0, 0);
  const { highest, lowest } = reach(row);
  const flank = flankOf(threadGroove(shape));
  const half = pitch / 4 / Math.tan(((shape.angle / 2) * Math.PI) / 180);
  const up = (level: number): number => -level * scale;
  const [crest, root, apex, sharp] = [up(highest), up(lowest), -half, half];
  const pitchLine = up((flank.foot.y + flank.top.y) / 2) + slopeTo(shape, flank) * scale;
  const body = sharp + Math.max(5, 1.2 * size(pen));

  const metal = flattened(row, 0.01 / scale).map(({ x, y }) => point(x * scale, up(y)));
  hatch(pen, [[...metal, point(right, body), point(0, body)]], { spacing: 2.2 });
  pen.stroke('outline', (trace) => traceOutline(trace, row, origin, scale));
  breakLine(pen, point(0, root), point(0, body));
  breakLine(pen, point(0, body), point(right, body));
  breakLine(pen, point(right, body), point(right, root));
  for (const x of [pitch / 2, 1.5 * pitch]) cutOff(pen, shape, scale, point(x, apex), 1);
  cutOff(pen, shape, scale, point(pitch, sharp), -1);

  const past = 3;
  pen.line('centre', point(-past, pitchLine), point(right + past, pitchLine));
  const end = right + past;
  const crestEnd = (highest - flank.top.y < 1e-9 ? pitch / 2 - flank.top.x * scale : 0) + 0.8;
  pen.line('dimension', point(1.5 * pitch + crestEnd, crest), point(end, crest));
  pen.line('dimension', point(right + 0.8, root), point(end, root));
  for (const [letter, y] of [
    ['d', crest],
    ['d_2', pitchLine],
    ['d_3', root],
  ] as const)
    pen.text(letter, point(end + 0.4 * size(pen), y), { anchor: 'start' });

  // The whole height stands inside, so that its extension lines do not pass by the letters of the parts.
  const inner = -past - Math.max(3, size(pen));
  const outer = inner - lane(pen) - pen.textSize('H').width;
  const places = {
    apex: point(pitch / 2, apex),
    crest: point(pitch / 2 - crestEnd + 0.8, crest),
    root: point(0, root),
    sharp: point(0, sharp),
  };
  const tall = (from: Point, to: Point, x: number, letter: string) =>
    heightDimension(pen, { from, to, x, label: letter, side: 'left' });
  tall(places.apex, places.sharp, inner, 'H');
  tall(places.apex, places.crest, outer, 'a');
  tall(places.crest, places.root, outer, 'h');
  tall(places.root, places.sharp, outer, 'b');

  widthDimension(pen, {
    from: places.apex,
    to: point(1.5 * pitch, apex),
    y: apex - Math.max(4, size(pen)),
    label: 'P_t',
  });
  angle(pen, point(pitch, sharp), shape.angle, 1.44 * half);
  const note = body + 2 + size(pen);
  arrow(pen, point(pitch, note - 0.2 * size(pen)), point(pitch, root));
  pen.text('r', point(pitch, note), { sit: 'below' });
  return note + pen.textSize('r').height;
}

/** From the middle of the flank down to where the groove is half a pitch wide; y down. */
function slopeTo(shape: ThreadShape, { foot, top }: ReturnType<typeof flankOf>): number {
  return (((foot.x + top.x) / 2 - shape.pitch / 4) * (top.y - foot.y)) / (top.x - foot.x);
}

/** The corner that was taken off, dashed; `way` 1 for a crest, -1 for a root. */
function cutOff(
  pen: Pen,
  { angle: between, crest, root }: ThreadShape,
  scale: number,
  tip: Point,
  way: 1 | -1,
): void {
  const { off, round } = way === 1 ? crest : root;
  const half = ((between / 2) * Math.PI) / 180;
  const down = round ? (roundingRadius(off, between) * Math.cos(half) ** 2) / Math.sin(half) : off;
  const [dx, dy] = [down * Math.tan(half) * scale, way * down * scale];
  pen.line('hidden', point(tip.x - dx, tip.y + dy), tip, point(tip.x + dx, tip.y + dy));
}

/** The angle of a groove, its letter above the arc. */
function angle(pen: Pen, corner: Point, between: number, radius: number): void {
  const half = ((between / 2) * Math.PI) / 180;
  const end = (side: number): Point =>
    point(corner.x + side * radius * Math.sin(half), corner.y - radius * Math.cos(half));
  pen.stroke('dimension', (trace) => trace.arc(corner, radius, -half, half));
  for (const side of [-1, 1]) {
    const tip = end(side);
    arrowhead(pen, tip, point(tip.x - side * 10 * Math.cos(half), tip.y - 10 * Math.sin(half)));
  }
  pen.text('A', point(corner.x, corner.y - radius - 0.3 * size(pen)), { sit: 'above' });
}
