import { z } from 'zod';
import { endOf, joined, type Path, type Segment, turnedPath } from '../../../geometry/curves/path.js';
import { distance } from '../../../geometry/curves/point.js';
import { type Flanks, wheelFlanks } from '../../../geometry/involute/flank.js';
import { involuteTooth } from '../../../geometry/involute/outline.js';
import { wave } from '../../drafting/break-line.js';
import { traceOutline } from '../../drafting/outline.js';
import { onBearing, type Point, point } from '../../drafting/point.js';
import { ENLARGEMENTS, REDUCTIONS } from '../../drafting/scale.js';
import type { StrokeKind } from '../../drafting/strokes.js';
import type { Pen } from '../../pen.js';

/** The wheel's centre on the paper. */
export const CENTRE: Point = point(0, 0);

/** Every scale, the largest first. */
export const SCALES = [...ENLARGEMENTS, ...REDUCTIONS.slice(1)] as const;

export const pressureAngle = () =>
  z.number().min(14.5).max(25).default(20).describe('a pressure angle in degrees, 14.5 to 25');

/** An involute wheel as it is drawn, its sizes already at the scale of the drawing; mm and radians. */
export interface DrawnWheel {
  readonly teeth: number;
  readonly module: number;
  readonly angle: number;
  readonly pitch: number;
  readonly pitchRadius: number;
  readonly flanks: Flanks;
}

export function drawnWheel(
  given: { readonly teeth: number; readonly module: number; readonly pressureAngle: number },
  scale: number,
): DrawnWheel {
  const module = given.module * scale;
  const angle = (given.pressureAngle * Math.PI) / 180;
  return {
    teeth: given.teeth,
    module,
    angle,
    pitch: (2 * Math.PI) / given.teeth,
    pitchRadius: (module * given.teeth) / 2,
    flanks: wheelFlanks(given.teeth, module, angle),
  };
}

/** So many teeth in a row, the middle of the row straight up, and the lands to either side; right to left. */
export function rowOfTeeth({ teeth, module, angle, pitch }: DrawnWheel, count: number): Path {
  const tooth = involuteTooth(teeth, module, angle);
  const place = (i: number): number => Math.PI / 2 + (i - (count - 1) / 2) * pitch;
  const turned = Array.from({ length: count }, (_, i) => turnedPath(tooth, place(i)));
  return joined(turnedPath(landOf(tooth), place(-1)), ...turned);
}

/** The root land that a tooth's path ends with; only a place where it has none. */
function landOf({ segments }: Path): Path {
  const [before, last] = segments.slice(-2) as [Segment, Segment];
  const isLand = 'centre' in last && distance(last.centre, CENTRE) < 1e-9;
  return { start: isLand ? before.to : last.to, segments: isLand ? [last] : [] };
}

/** Radius at which a rim is broken off so that root and base circles are seen above. */
export const rimUnder = ({ flanks, module }: DrawnWheel): number =>
  Math.min(flanks.rootRadius, flanks.baseRadius) - 0.7 * module;

/** Draws a row of teeth about a centre, and breaks off the rim below it at a radius. */
export function drawRow(pen: Pen, row: Path, rim: number, about = CENTRE): void {
  const onPaper = ({ x, y }: Point): Point => point(about.x + x, about.y - y);
  const lower = ({ x, y }: Point): Point => onBearing(rim, Math.atan2(x, y), about);
  const [right, left] = [row.start, endOf(row)];
  pen.stroke('outline', (trace) => traceOutline(trace, row, about, 1));
  pen.stroke('fine', (trace) => {
    wave(trace.moveTo(onPaper(left)), onPaper(left), lower(left));
    wave(trace, lower(left), lower(right));
    wave(trace, lower(right), onPaper(right));
  });
}

/** An arc about the wheel's centre between two bearings. */
export function arcAbout(pen: Pen, kind: StrokeKind, radius: number, from: number, to: number): void {
  pen.stroke(kind, (trace) => trace.arc(CENTRE, radius, from, to));
}
