import { z } from 'zod';
import { widthDimension } from '../drafting/dimension.js';
import { hatch } from '../drafting/hatch.js';
import { type Note, notesAt } from '../drafting/leader.js';
import { onBearing, type Point, point } from '../drafting/point.js';
import { ENLARGEMENTS, firstThatFits, scaleName } from '../drafting/scale.js';
import { Trace } from '../drafting/trace.js';
import { length as inWords, plain } from '../drafting/wording.js';
import { defineFigure } from '../figure.js';
import { count, length, toothModule } from '../given.js';
import { Pen } from '../pen.js';
import {
  checkFace,
  enlarged,
  faceMiddle,
  type ToothShape,
  toothCorners,
  traceTooth,
} from './tooth-outline.js';

/** Wider than this the pinion alone would fill a page, mm. */
const LARGEST = 90;

/** A pinion seen on its end, cut through its leaves. */
export const pinionSection = defineFigure({
  name: 'pinion-section',
  title: 'The pinion and its leaves',
  given: z
    .strictObject({
      leaves: count(6, 60),
      module: toothModule(),
      outsideDiameter: length(0.1, 500),
      pitchDiameter: length(0.1, 500),
      rootDiameter: length(0.05, 500),
      leafThickness: length(0.01, 20),
      tipRadius: length(0.01, 50),
    })
    .refine((g) => g.pitchDiameter < g.outsideDiameter, {
      path: ['pitchDiameter'],
      message: 'a pitch circle inside the blank',
    })
    .refine((g) => g.rootDiameter < g.pitchDiameter, {
      path: ['rootDiameter'],
      message: 'a root circle inside the pitch circle',
    })
    .refine((g) => g.leafThickness < (0.95 * Math.PI * g.pitchDiameter) / g.leaves, {
      path: ['leafThickness'],
      message: 'leaves with spaces between them',
    }),
  draw(given, style) {
    const shape: ToothShape = {
      rootRadius: given.rootDiameter / 2,
      pitchRadius: given.pitchDiameter / 2,
      tipRadius: given.outsideDiameter / 2,
      halfAngle: given.leafThickness / given.pitchDiameter,
      faceRadius: given.tipRadius,
    };
    checkFace('tipRadius', shape);
    const mm = (value: number): string => inWords(value, style);
    const label =
      `End view of a pinion of ${given.leaves} leaves, module ${plain(given.module)}: blank ${mm(given.outsideDiameter)}, ` +
      `pitch circle ${mm(given.pitchDiameter)}, root circle ${mm(given.rootDiameter)}, ` +
      `leaves ${mm(given.leafThickness)} thick, tip radius ${mm(given.tipRadius)}.`;
    const scales = ENLARGEMENTS.filter((scale) => scale === 1 || given.outsideDiameter * scale <= LARGEST);
    return firstThatFits(scales, style, (scale) => {
      const pen = new Pen(style);
      const drawn = enlarged(shape, scale);
      drawLeaves(pen, drawn, given.leaves);
      const { pitchBefore, pitchAfter } = toothCorners(drawn, 0);
      widthDimension(pen, {
        from: pitchBefore,
        to: pitchAfter,
        y: -drawn.tipRadius - Math.max(4, style.labelSize),
        label: `leaf ${mm(given.leafThickness)}`,
      });
      notesAt(pen, drawn.tipRadius + Math.max(8, 2.5 * style.labelSize), notes(drawn, given, mm));
      return pen.finish(label, scaleName(scale));
    });
  },
});

function drawLeaves(pen: Pen, shape: ToothShape, leaves: number): void {
  const centre = point(0, 0);
  const step = (2 * Math.PI) / leaves;
  const outline = (trace: Trace): void => {
    trace.moveTo(toothCorners(shape, 0).rootBefore);
    for (let leaf = 0; leaf < leaves; leaf++) {
      traceTooth(trace, shape, leaf * step);
      trace.arc(centre, shape.rootRadius, leaf * step + shape.halfAngle, (leaf + 1) * step - shape.halfAngle);
    }
    trace.close();
  };
  const edge = new Trace();
  outline(edge);
  hatch(pen, edge.runs, { spacing: 2.2 });
  pen.stroke('outline', outline);
  pen.circle('fine', centre, shape.tipRadius);
  pen.circle('centre', centre, shape.pitchRadius);
  const past = shape.tipRadius + 2.5;
  pen.line('centre', point(-past, 0), point(past, 0));
  pen.line('centre', point(0, -past), point(0, past));
}

/** Roughly where on the right each note points, degrees from the top: far enough apart for three different spaces. */
const TOWARDS = { blank: 40, tip: 62, pitch: 85, root: 130 } as const;

/** What each circle is, read from spaces on the right, where the lines to them cross no leaf. */
function notes(
  shape: ToothShape,
  given: {
    leaves: number;
    outsideDiameter: number;
    pitchDiameter: number;
    rootDiameter: number;
    tipRadius: number;
  },
  mm: (value: number) => string,
): Note[] {
  const step = 360 / given.leaves;
  const leaf = (near: number): number => Math.round(near / step) * step;
  const space = (near: number): number => (Math.round(near / step - 0.5) + 0.5) * step;
  const note = (
    text: string,
    bearing: number,
    tip: (bearing: number) => Point,
  ): Note & { bearing: number } => {
    const radians = (bearing * Math.PI) / 180;
    return { text, bearing, tip: tip(radians), via: onBearing(shape.tipRadius + 3, radians) };
  };
  return [
    note(`blank d_a = ${mm(given.outsideDiameter)}`, space(TOWARDS.blank), (b) =>
      onBearing(shape.tipRadius, b),
    ),
    note(`tip radius ${mm(given.tipRadius)}`, leaf(TOWARDS.tip), (b) => faceMiddle(shape, b)),
    note(`pitch circle d = ${mm(given.pitchDiameter)}`, space(TOWARDS.pitch), (b) =>
      onBearing(shape.pitchRadius, b),
    ),
    note(`root d_f = ${mm(given.rootDiameter)}`, space(TOWARDS.root), (b) => onBearing(shape.rootRadius, b)),
  ].sort((a, b) => a.bearing - b.bearing);
}
