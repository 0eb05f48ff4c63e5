import { areaOf, throughPoints } from '../curves/path.js';
import { type Point, turned } from '../curves/point.js';
import { bearing, between, metalRound, type Stretch } from './around.js';
import { spacesRound } from './indexing.js';
import { clearSpaces, leanOf } from './lean.js';
import { FINENESS, type Job } from './simulate.js';

/** What is measured on a wheel that was cut; lengths mm, from the first space anticlockwise. */
export interface MeasuredWheel {
  /** Along the pitch circle between each space and the next; 0 where nothing is left. The last closes the wheel. */
  readonly toothThicknesses: readonly number[];
  /** What is cut away of the pitch circle about each space that has not run into another. */
  readonly spaceWidths: readonly number[];
  /** Of each tooth, how much of the blank's edge is left on its tip. */
  readonly lands: readonly number[];
  /** How far the spaces lean from the radius, degrees anticlockwise; the middle one of those that stand clear. */
  readonly lean: number;
  /** What a dial on the tips swings as the wheel is turned, where any of the blank's edge is left. */
  readonly runOut: number;
  /** From the axis to the bottom of a space that stands clear, along its own middle line. */
  readonly rootRadius: number;
  /** Metal left, mm². */
  readonly area: number;
}

const RADIANS = Math.PI / 180;
const AXIS: Point = { x: 0, y: 0 };

/**
 * Measures a wheel about the axis it was cut on.
 *
 * @param teeth that were wanted
 * @param pitchRadius of the wheel that was wanted, mm
 */
export function measureWheel(
  outlines: readonly (readonly Point[])[],
  job: Job,
  teeth: number,
  pitchRadius: number,
): MeasuredWheel {
  const spaces = spacesRound(job.cuts, teeth);
  const metal = metalRound(outlines, AXIS, pitchRadius);
  const middles = spaces.map((cut) => middleAt(cut, job, pitchRadius, AXIS));
  const along = RADIANS * pitchRadius;
  const blankMiddle = { x: 0, y: job.eccentricity };
  const onRim = spaces.map((cut) => middleAt(cut, job, job.blankRadius, blankMiddle));
  const rim = onCircle(outlines, blankMiddle, job.blankRadius, 2 * FINENESS * job.space.module);
  return {
    toothThicknesses: between(metal, middles).map((angle) => angle * along),
    spaceWidths: spaceWidths(metal, middles).map((angle) => angle * along),
    lands: between(rim, onRim).map((angle) => angle * RADIANS * job.blankRadius),
    lean: leanOf(outlines, job, spaces, pitchRadius),
    runOut: swing(rim, blankMiddle, job.blankRadius),
    rootRadius: bottomOf(outlines, clearSpaces(spaces)[0] ?? 0, job),
    area: outlines.reduce((sum, outline) => sum + areaOf(throughPoints(outline)), 0),
  };
}

/** Where the middle of a cut passes a radius about the axis, as it is seen from a place. */
function middleAt(cut: number, { offset }: Job, radius: number, from: Point): number {
  const up = Math.sqrt(radius ** 2 - offset ** 2);
  return bearing(turned({ x: offset, y: up }, cut * RADIANS), from);
}

/** Degrees of the circle out of metal about each middle that stands there alone; two spaces in one tell no width. */
function spaceWidths(metal: readonly Stretch[], middles: readonly number[]): number[] {
  const bare = metal.map(({ to }, i) => {
    const next = metal[i + 1]?.from ?? (metal[0]?.from ?? 0) + 360;
    return { from: to % 360, to: (to % 360) + Math.max(0, next - to) };
  });
  const holds = ({ from, to }: Stretch, middle: number): boolean =>
    (((middle - from) % 360) + 360) % 360 <= to - from;
  return middles.flatMap((middle) => {
    const gap = bare.find((one) => holds(one, middle));
    const alone = gap && middles.every((other) => other === middle || !holds(gap, other));
    return alone ? [gap.to - gap.from] : [];
  });
}

/** The stretches of an outline that lie on a circle. */
function onCircle(
  outlines: readonly (readonly Point[])[],
  centre: Point,
  radius: number,
  within: number,
): Stretch[] {
  const stretches: Stretch[] = [];
  for (const outline of outlines) {
    let from = outline.at(-1) as Point;
    for (const to of outline) {
      if (isOn(from, centre, radius, within) && isOn(to, centre, radius, within)) {
        const start = bearing(from, centre);
        const turn = ((bearing(to, centre) - start + 540) % 360) - 180;
        // A wall that is nearly along the circle may run back a little.
        if (turn > 0) stretches.push({ from: start, to: start + turn });
      }
      from = to;
    }
  }
  return stretches;
}

/** How much further one end of the blank's edges is from the axis than another. */
function swing(rim: readonly Stretch[], { y }: Point, radius: number): number {
  const reaches = rim.flatMap(({ from, to }) =>
    [from, to].map((angle) =>
      Math.hypot(radius * Math.sin(angle * RADIANS), y + radius * Math.cos(angle * RADIANS)),
    ),
  );
  return reaches.length === 0 ? 0 : Math.max(...reaches) - Math.min(...reaches);
}

const isOn = (p: Point, centre: Point, radius: number, within: number): boolean =>
  Math.abs(Math.hypot(p.x - centre.x, p.y - centre.y) - radius) <= within;

/** The lowest place of a space near its middle line, seen with the space at the top. */
function bottomOf(outlines: readonly (readonly Point[])[], cut: number, { offset, space }: Job): number {
  let lowest = Number.POSITIVE_INFINITY;
  for (const outline of outlines)
    for (const place of outline) {
      const { x, y } = turned(place, -cut * RADIANS);
      if (y > 0 && Math.abs(x - offset) < space.corner / 2) lowest = Math.min(lowest, y);
    }
  return lowest;
}
