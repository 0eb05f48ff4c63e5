import { z } from 'zod';
import { pairOf } from '../../../calculations/wheels/pair.js';
import { fitArcs } from '../../../geometry/curves/fit-arcs.js';
import { mirroredPath, type Path, turnedPath } from '../../../geometry/curves/path.js';
import { type Face, theoreticalAddendum, wheelFace } from '../../../geometry/wheels/epicycloid.js';
import { wheelTooth } from '../../../geometry/wheels/wheel-outline.js';
import { type Note, notesAt } from '../../drafting/leader.js';
import { traceOutline } from '../../drafting/outline.js';
import { onBearing, type Point, point } from '../../drafting/point.js';
import { firstThatFits, scaleName } from '../../drafting/scale.js';
import { length as inWords, plain } from '../../drafting/wording.js';
import { defineFigure } from '../../figure.js';
import { count, toothModule } from '../../given.js';
import { Pen } from '../../pen.js';
import { drawRow, rowOfTeeth, SCALES } from './teeth.js';

/** Taller than this and a figure crowds the words off a page, mm. */
const TALLEST = 90;

/** A tooth much enlarged: the circle that rolls, the epicycloid it draws, the flank, and what is cut off the point. */
export const toothCurve = defineFigure({
  name: 'tooth-curve',
  title: 'How a tooth gets its curves',
  given: z
    .strictObject({ teeth: count(12, 160), leaves: count(6, 20), module: toothModule() })
    .refine((g) => g.leaves <= g.teeth, {
      path: ['leaves'],
      message: 'at most as many as the wheel has teeth',
    }),
  draw({ teeth, leaves, module }, style) {
    const full = theoreticalAddendum(teeth, leaves) * module;
    const words = {
      full: inWords(full, style),
      cut: inWords(0.95 * full, style),
      roller: inWords((module * leaves) / 2, style),
    };
    const label =
      `A tooth of a wheel of ${teeth} teeth, module ${plain(module)}: a circle of ${words.roller}, half the pitch circle of its ` +
      `${leaves}-leaf pinion, rolls on the pitch circle and a point of it draws the face; the faces would meet ${words.full} ` +
      `up and are cut off at ${words.cut}; the flank is radial.`;
    const tall = module * (leaves / 2 + 4);
    const scales = SCALES.filter((scale) => scale <= 0.1 || tall * scale <= TALLEST);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      const size = module * scale;
      if (size < 2.2) return undefined;
      drawTooth(pen, { teeth, leaves, size }, words);
      return pen.finish(label, scaleName(scale));
    });
  },
});

interface Drawn {
  readonly teeth: number;
  readonly leaves: number;
  /** A module on the paper, mm. */
  readonly size: number;
}

function drawTooth(
  pen: Pen,
  { teeth, leaves, size }: Drawn,
  words: { readonly full: string; readonly cut: string; readonly roller: string },
): void {
  const pair = pairOf({ teeth, leaves, module: size, addendum: 'practical' }, (size * (teeth + leaves)) / 2);
  const [pitchRadius, roller] = [(teeth / 2) * size, (leaves / 4) * size];
  const pitch = (2 * Math.PI) / teeth;
  // The pitch circle stands through the origin, the tooth upright on it.
  const centre = point(0, pitchRadius);
  const onPaper = ({ x, y }: Point): Point => point(centre.x + x, centre.y - y);
  const row = rowOfTeeth(wheelTooth({ ...pair, module: size }), pitch, [Math.PI / 2]);
  const foot = pitchRadius - pair.dedendum * size;
  drawRow(pen, row, foot - 0.9 * size, centre);

  // The left face is drawn by a circle that rolls to the right; here it has rolled two thirds of the way.
  const face = wheelFace(teeth, leaves, size);
  const upright = (path: Path): Path => turnedPath(mirroredPath(path), Math.PI / 2 + face.halfTooth);
  const cutAt = face.rollAt(pitchRadius + pair.addendum * size);
  const beyond = upright(fitArcs(face.at, cutAt, face.tipRoll, 0.005));
  const tip = pitchRadius + pair.addendum * size;
  pen.stroke('hidden', (trace) => traceOutline(trace, beyond, centre, 1));
  pen.stroke('hidden', (trace) => traceOutline(trace, mirrorLeft(beyond), centre, 1));
  const further = 1.9 * face.tipRoll;
  const epicycloid = onPaper(place(face, 0.95 * further));
  pen.stroke('fine', (trace) =>
    traceOutline(trace, upright(fitArcs(face.at, face.tipRoll, further, 0.005)), centre, 1),
  );

  const roll = 0.62 * face.tipRoll;
  const bearing = roll - face.halfTooth;
  const rollerCentre = onBearing(pitchRadius + roller, bearing, centre);
  const traced = onPaper(place(face, roll));
  pen.circle('fine', rollerCentre, roller);
  pen.line('dimension', rollerCentre, traced);
  pen.circle('dimension', rollerCentre, 0.5, 'ink');
  pen.circle('dimension', traced, 0.8, 'ink');
  const arc = (kind: 'centre' | 'fine', radius: number, from: number, to: number): void =>
    pen.stroke(kind, (trace) => trace.arc(centre, radius, from, to));
  const [left, right] = [-0.8 * pitch, Math.max(0.8 * pitch, bearing + (1.05 * roller) / pitchRadius)];
  arc('centre', pitchRadius, left, right);
  arc('fine', tip, 0.25 * pitch, 0.62 * pitch);
  // The flank runs on towards the centre of the wheel.
  pen.line(
    'hidden',
    onBearing(foot, -face.halfTooth, centre),
    onBearing(foot - 2.2 * size, -face.halfTooth, centre),
  );

  const column =
    Math.max(rollerCentre.x + roller, onBearing(tip, right, centre).x, onPaper(place(face, further)).x) +
    Math.max(6, 2 * pen.style.labelSize);
  const notes: Note[] = [
    { text: 'epicycloid, going on', tip: epicycloid },
    {
      text: ['rolling circle, half the', `pinion pitch circle: ${words.roller}`],
      tip: onBearing(roller, Math.PI / 3, rollerCentre),
    },
    {
      text: ['faces would meet', `${words.full} up`],
      tip: onBearing(pitchRadius + (tip - pitchRadius) / 0.95, 0, centre),
    },
    { text: ['cut off at the tip', `circle, ${words.cut} up`], tip: onBearing(tip, 0.55 * pitch, centre) },
    { text: 'pitch circle', tip: onBearing(pitchRadius, right, centre) },
    { text: 'flank, radial', tip: onBearing(pitchRadius - 0.8 * size, face.halfTooth, centre) },
  ];
  notesAt(
    pen,
    column,
    notes.toSorted((a, b) => a.tip.y - b.tip.y),
  );
}

/** A place of the left face on a wheel whose tooth stands upright. */
function place({ at, halfTooth }: Face, roll: number): Point {
  const { x, y } = at(roll);
  const lean = Math.PI / 2 + halfTooth;
  // Mirrored, so that the face leans to the right, then turned up.
  return { x: x * Math.cos(lean) + y * Math.sin(lean), y: x * Math.sin(lean) - y * Math.cos(lean) };
}

/** A path mirrored from left to right. */
const mirrorLeft = (path: Path): Path => turnedPath(mirroredPath(path), Math.PI);
